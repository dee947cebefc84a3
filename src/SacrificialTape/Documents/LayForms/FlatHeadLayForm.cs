using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay on a flat head is read and written.</summary>
internal static class FlatHeadLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<FlatHeadLay>("flat head", Read, Write);

    private static FlatHeadLay? Read(FormReader reader)
    {
        FlatHead head = reader.Surface<FlatHead>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        LayChoices choices = reader.Choices("choices");
        LayWork.Charge(reader, head?.OutsideDiameter, stock, leastLap, LayWork.OnFace);
        return reader.Make(() => new FlatHeadLay(head!, stock, leastLap, choices));
    }

    private static void Write(FormWriter writer, FlatHeadLay lay)
    {
        writer.Surface("surface", lay.Head);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Choices("choices", lay.Choices);
    }
}
