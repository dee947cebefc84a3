using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay of strips along meridians is read and written.</summary>
internal static class MeridianStripLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<MeridianStripLay>("meridian strips", Read, Write);

    private static MeridianStripLay? Read(FormReader reader)
    {
        Surface surface = reader.SurfaceAmong("surface", LayWork.Revolved);
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        int? stages = reader.Has("stages") ? reader.Count("stages") : null; // left out: the fewest metres
        LayChoices choices = reader.Choices("choices");
        LayWork.ChargeRevolved(reader, surface, stock, leastLap);
        return reader.Make(() => new MeridianStripLay(surface, stock, leastLap, stages, choices));
    }

    private static void Write(FormWriter writer, MeridianStripLay lay)
    {
        writer.Surface("surface", lay.Surface);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Count("stages", lay.Lengths.Count - 1);
        writer.Choices("choices", lay.Choices);
    }
}
