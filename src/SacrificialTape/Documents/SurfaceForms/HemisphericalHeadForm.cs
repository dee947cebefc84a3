using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a hemispherical head is read and written: by its outside, which is all it keeps.</summary>
internal static class HemisphericalHeadForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<HemisphericalHead>("hemispherical head", Read, Write);

    private static HemisphericalHead? Read(FormReader reader)
    {
        Length straightFlange = reader.Length("straightFlange");
        if (reader.Has("insideDiameter"))
        {
            Length insideDiameter = reader.Length("insideDiameter");
            Length thickness = reader.Length("thickness");
            return reader.Make(() => HemisphericalHead.FromInside(insideDiameter, thickness, straightFlange));
        }

        Length outsideDiameter = reader.Length("outsideDiameter");
        return reader.Make(() => HemisphericalHead.FromOutside(outsideDiameter, straightFlange));
    }

    private static void Write(FormWriter writer, HemisphericalHead head)
    {
        OutsideLimit.Hold(head.OutsideDiameterMm, writer.Place);
        writer.Length("outsideDiameter", head.OutsideDiameter);
        writer.Length("straightFlange", head.StraightFlange);
    }
}
