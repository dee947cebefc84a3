using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay of rings on a pipe is read and written.</summary>
internal static class RingLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<RingLay>("rings", Read, Write);

    private static RingLay? Read(FormReader reader)
    {
        StraightPipe pipe = reader.Surface<StraightPipe>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => new RingLay(pipe, stock, leastLap, choices));
    }

    private static void Write(FormWriter writer, RingLay lay)
    {
        writer.Surface("surface", lay.Pipe);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Choices("choices", lay.Choices);
    }
}
