using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a circular hollow section is read and written.</summary>
internal static class CircularHollowSectionForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<CircularHollowSection>("circular hollow section", Read, Write);

    private static CircularHollowSection? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length length = reader.Length("length");
        return reader.Make(() => CircularHollowSection.FromOutside(outsideDiameter, length));
    }

    private static void Write(FormWriter writer, CircularHollowSection section)
    {
        OutsideLimit.Hold(section.OutsideDiameter.Millimeters, writer.Place);
        writer.Length("outsideDiameter", section.OutsideDiameter);
        writer.Length("length", section.Length);
    }
}
