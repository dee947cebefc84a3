using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a flat head is read and written.</summary>
internal static class FlatHeadForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<FlatHead>("flat head", Read, Write);

    private static FlatHead? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length straightFlange = reader.Length("straightFlange");
        return reader.Make(() => FlatHead.FromOutside(outsideDiameter, straightFlange));
    }

    private static void Write(FormWriter writer, FlatHead head)
    {
        writer.Length("outsideDiameter", head.OutsideDiameter);
        writer.Length("straightFlange", head.StraightFlange);
    }
}
