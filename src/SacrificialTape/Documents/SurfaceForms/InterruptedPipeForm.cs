using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Documents;

/// <summary>How a pipe parted by bands that stay clear is read and written.</summary>
internal static class InterruptedPipeForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<InterruptedPipe>("interrupted pipe", Read, Write);

    private static InterruptedPipe? Read(FormReader reader)
    {
        StraightPipe pipe = reader.Surface<StraightPipe>("pipe");
        ValueList<StayClear> bands = reader.List("bands", StayClearForm.Read);

        // Each band parts one span from the next, and spans that differ are held against each other.
        double spans = bands.Sum(static band => (double)band.Count);
        double placed = bands.Count(static band => band.IsPlaced);
        reader.CountSteps(spans + (placed * placed));
        return reader.Make(() => new InterruptedPipe(pipe, bands));
    }

    private static void Write(FormWriter writer, InterruptedPipe interrupted)
    {
        writer.Surface("pipe", interrupted.Pipe);
        writer.List("bands", interrupted.Bands, StayClearForm.Write);
    }
}
