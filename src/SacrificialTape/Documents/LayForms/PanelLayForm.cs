using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a lay on a panel is read and written.</summary>
internal static class PanelLayForm
{
    internal static LayForm Form { get; } = LayForm.Of<PanelLay>("panel", Read, Write);

    private static PanelLay? Read(FormReader reader)
    {
        Panel panel = reader.Surface<Panel>("surface");
        StripStock stock = reader.Stock("stock");
        Length leastLap = reader.Length("leastLap");
        PanelDirection direction = reader.Word("direction", JobWords.PanelDirections);
        LayChoices choices = reader.Choices("choices");
        LayWork.ChargePanel(reader, panel, stock, leastLap);
        return reader.Make(() => new PanelLay(panel, stock, direction, leastLap, choices));
    }

    private static void Write(FormWriter writer, PanelLay lay)
    {
        writer.Surface("surface", lay.Panel);
        writer.Stock("stock", lay.Stock);
        writer.Length("leastLap", lay.LeastLap);
        writer.Word("direction", lay.Direction, JobWords.PanelDirections);
        writer.Choices("choices", lay.Choices);
    }
}
