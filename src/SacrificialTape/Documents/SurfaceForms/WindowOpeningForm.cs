using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How the rim of an opening in a sheet is read and written.</summary>
internal static class WindowOpeningForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<WindowOpening>("window opening", Read, Write);

    private static WindowOpening? Read(FormReader reader)
    {
        Length thickness = reader.Length("thickness");
        Length frontReach = reader.Length("frontReach");
        Length backReach = reader.Length("backReach");
        if (reader.Has("clearDiameter"))
        {
            Length clearDiameter = reader.Length("clearDiameter");
            return reader.Make(() => WindowOpening.Circular(clearDiameter, thickness, frontReach, backReach));
        }

        Length clearWidth = reader.Length("clearWidth");
        Length clearHeight = reader.Length("clearHeight");
        return reader.Make(() => WindowOpening.Rectangular(clearWidth, clearHeight, thickness, frontReach, backReach));
    }

    private static void Write(FormWriter writer, WindowOpening opening)
    {
        if (opening.IsRound)
        {
            writer.Length("clearDiameter", opening.ClearWidth);
        }
        else
        {
            writer.Length("clearWidth", opening.ClearWidth);
            writer.Length("clearHeight", opening.ClearHeight);
        }

        writer.Length("thickness", opening.Thickness);
        writer.Length("frontReach", opening.FrontReach);
        writer.Length("backReach", opening.BackReach);
    }
}
