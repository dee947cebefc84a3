using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay of gores is read and written.</summary>
internal static class GoreLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<GoreLay>("gores", Read, Write);

    private static GoreLay? Read(FormReader reader)
    {
        Surface surface = reader.SurfaceAmong("surface", LayWork.Revolved);
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        LayChoices choices = reader.Choices("choices");
        LayWork.ChargeRevolved(reader, surface, stock, leastLap);
        return reader.Make(() => new GoreLay(surface, stock, leastLap, choices));
    }

    private static void Write(FormWriter writer, GoreLay lay)
    {
        writer.Surface("surface", lay.Surface);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Choices("choices", lay.Choices);
    }
}
