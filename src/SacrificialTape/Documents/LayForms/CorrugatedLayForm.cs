using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay on a corrugated panel is read and written.</summary>
internal static class CorrugatedLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<CorrugatedLay>("corrugated", Read, Write);

    private static CorrugatedLay? Read(FormReader reader)
    {
        CorrugatedPanel panel = reader.Surface<CorrugatedPanel>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        CorrugatedDirection direction = reader.Word("direction", JobWords.CorrugatedDirections);
        LayChoices choices = reader.Choices("choices");
        return reader.Make(() => new CorrugatedLay(panel, stock, direction, leastLap, choices));
    }

    private static void Write(FormWriter writer, CorrugatedLay lay)
    {
        writer.Surface("surface", lay.Panel);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Word("direction", lay.Direction, JobWords.CorrugatedDirections);
        writer.Choices("choices", lay.Choices);
    }
}
