using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How an annular panel is read and written.</summary>
internal static class AnnularPanelForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<AnnularPanel>("annular panel", Read, Write);

    private static AnnularPanel? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length insideDiameter = reader.Length("insideDiameter");
        ValueList<PanelOpening> openings = reader.List("openings", PanelOpeningForm.Read);
        PanelOpeningForm.Charge(reader, openings);
        return reader.Make(() => new AnnularPanel(outsideDiameter, insideDiameter, openings));
    }

    private static void Write(FormWriter writer, AnnularPanel panel)
    {
        writer.Length("outsideDiameter", panel.OutsideDiameter);
        writer.Length("insideDiameter", panel.InsideDiameter);
        writer.List("openings", panel.Openings, PanelOpeningForm.Write);
    }
}
