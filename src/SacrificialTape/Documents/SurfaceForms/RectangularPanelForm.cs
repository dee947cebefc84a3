using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a rectangular panel is read and written.</summary>
internal static class RectangularPanelForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<RectangularPanel>("rectangular panel", Read, Write);

    private static RectangularPanel? Read(FormReader reader)
    {
        Length width = reader.Length("width");
        Length height = reader.Length("height");
        ValueList<PanelOpening> openings = reader.List("openings", PanelOpeningForm.Read);
        PanelOpeningForm.Charge(reader, openings);
        return reader.Make(() => new RectangularPanel(width, height, openings));
    }

    private static void Write(FormWriter writer, RectangularPanel panel)
    {
        writer.Length("width", panel.Width);
        writer.Length("height", panel.Height);
        writer.List("openings", panel.Openings, PanelOpeningForm.Write);
    }
}
