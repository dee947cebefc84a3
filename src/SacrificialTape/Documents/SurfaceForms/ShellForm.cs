using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a shell is read and written.</summary>
internal static class ShellForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<Shell>("shell", Read, Write);

    private static Shell? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length length = reader.Length("length");
        ShellAxis axis = reader.Word("axis", JobWords.Axes);
        ValueList<ShellOpening> openings = reader.List("openings", ShellOpeningForm.Read);
        return reader.Make(() => new Shell(outsideDiameter, length, axis, openings));
    }

    private static void Write(FormWriter writer, Shell shell)
    {
        writer.Length("outsideDiameter", shell.OutsideDiameter);
        writer.Length("length", shell.Length);
        writer.Word("axis", shell.Axis, JobWords.Axes);
        writer.List("openings", shell.Openings, ShellOpeningForm.Write);
    }
}
