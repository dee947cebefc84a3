using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a circular panel is read and written.</summary>
internal static class CircularPanelForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<CircularPanel>("circular panel", Read, Write);

    private static CircularPanel? Read(FormReader reader)
    {
        Length diameter = reader.Length("diameter");
        ValueList<PanelOpening> openings = reader.List("openings", PanelOpeningForm.Read);
        PanelOpeningForm.Charge(reader, openings);
        return reader.Make(() => new CircularPanel(diameter, openings));
    }

    private static void Write(FormWriter writer, CircularPanel panel)
    {
        writer.Length("diameter", panel.Diameter);
        writer.List("openings", panel.Openings, PanelOpeningForm.Write);
    }
}
