using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How tape by measured area is read and written.</summary>
internal static class MeasuredAreaLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<MeasuredAreaLay>("measured area", Read, Write);

    private static MeasuredAreaLay? Read(FormReader reader)
    {
        MeasuredArea area = reader.Surface<MeasuredArea>("surface");
        StripStock stock = reader.Stock("stock");
        Length lap = reader.Length("lap");
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => new MeasuredAreaLay(area, stock, lap, choices));
    }

    private static void Write(FormWriter writer, MeasuredAreaLay lay)
    {
        writer.Surface("surface", lay.Area);
        writer.Stock("stock", lay.Stock);
        writer.Length("lap", lay.Lap);
        writer.Choices("choices", lay.Choices);
    }
}
