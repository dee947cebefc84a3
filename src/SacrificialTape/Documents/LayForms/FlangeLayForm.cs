using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay on a flange is read and written.</summary>
internal static class FlangeLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<FlangeLay>("flange", Read, Write);

    private static FlangeLay? Read(FormReader reader)
    {
        Flange flange = reader.Surface<Flange>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        LayChoices choices = reader.Choices("choices");
        LayWork.Charge(reader, flange?.OutsideDiameter * 2, stock, leastLap, LayWork.OnFace);
        return reader.Make(() => new FlangeLay(flange!, stock, leastLap, choices));
    }

    private static void Write(FormWriter writer, FlangeLay lay)
    {
        writer.Surface("surface", lay.Flange);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Choices("choices", lay.Choices);
    }
}
