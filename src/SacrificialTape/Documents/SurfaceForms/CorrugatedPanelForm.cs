using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a corrugated panel is read and written.</summary>
internal static class CorrugatedPanelForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<CorrugatedPanel>("corrugated panel", Read, Write);

    private static CorrugatedPanel? Read(FormReader reader)
    {
        Length pitch = reader.Length("pitch");
        Length crownWidth = reader.Length("crownWidth");
        Length valleyWidth = reader.Length("valleyWidth");
        Length depth = reader.Length("depth");
        int corrugations = reader.Count("corrugations");
        Length length = reader.Length("length");
        Length flatWidth = reader.Length("flatWidth");
        return reader.Make(() => new CorrugatedPanel(pitch, crownWidth, valleyWidth, depth, corrugations, length, flatWidth));
    }

    private static void Write(FormWriter writer, CorrugatedPanel panel)
    {
        writer.Length("pitch", panel.Pitch);
        writer.Length("crownWidth", panel.CrownWidth);
        writer.Length("valleyWidth", panel.ValleyWidth);
        writer.Length("depth", panel.Depth);
        writer.Count("corrugations", panel.Corrugations);
        writer.Length("length", panel.Length);
        writer.Length("flatWidth", panel.FlatWidth);
    }
}
