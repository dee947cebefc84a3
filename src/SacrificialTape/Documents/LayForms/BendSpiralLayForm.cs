using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a spiral on a bend is read and written.</summary>
internal static class BendSpiralLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<BendSpiralLay>("bend spiral", Read, Write);

    private static BendSpiralLay? Read(FormReader reader)
    {
        Bend bend = reader.Surface<Bend>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => new BendSpiralLay(bend, stock, leastLap, choices));
    }

    private static void Write(FormWriter writer, BendSpiralLay lay)
    {
        writer.Surface("surface", lay.Bend);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Choices("choices", lay.Choices);
    }
}
