using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How an ellipsoidal head is read and written: by the face that was measured.</summary>
internal static class EllipsoidalHeadForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<EllipsoidalHead>("ellipsoidal head", Read, Write);

    private static EllipsoidalHead? Read(FormReader reader)
    {
        Length straightFlange = reader.Length("straightFlange");
        if (reader.Has("insideDiameter"))
        {
            Length insideDiameter = reader.Length("insideDiameter");
            Length insideDepth = reader.Length("insideDepth");
            Length thickness = reader.Length("thickness");
            return reader.Make(() => EllipsoidalHead.FromInside(insideDiameter, insideDepth, thickness, straightFlange));
        }

        Length outsideDiameter = reader.Length("outsideDiameter");
        Length outsideDepth = reader.Length("outsideDepth");
        return reader.Make(() => EllipsoidalHead.FromOutside(outsideDiameter, outsideDepth, straightFlange));
    }

    private static void Write(FormWriter writer, EllipsoidalHead head)
    {
        if (head.PlateMm > 0)
        {
            writer.Length("insideDiameter", Length.FromMillimeters(head.FaceDiameterMm));
            writer.Length("insideDepth", Length.FromMillimeters(head.FaceDepthMm));
            writer.Length("thickness", Length.FromMillimeters(head.PlateMm));
        }
        else
        {
            writer.Length("outsideDiameter", Length.FromMillimeters(head.FaceDiameterMm));
            writer.Length("outsideDepth", Length.FromMillimeters(head.FaceDepthMm));
        }

        writer.Length("straightFlange", head.StraightFlange);
    }
}
