using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a conical head is read and written.</summary>
internal static class ConicalHeadForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<ConicalHead>("conical head", Read, Write);

    private static ConicalHead? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length outsideDepth = reader.Length("outsideDepth");
        Length straightFlange = reader.Length("straightFlange");
        return reader.Make(() => ConicalHead.FromOutside(outsideDiameter, outsideDepth, straightFlange));
    }

    private static void Write(FormWriter writer, ConicalHead head)
    {
        writer.Length("outsideDiameter", head.OutsideDiameter);
        writer.Length("outsideDepth", head.Depth);
        writer.Length("straightFlange", head.StraightFlange);
    }
}
