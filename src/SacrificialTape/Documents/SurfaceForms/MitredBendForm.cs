using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a mitred bend is read and written.</summary>
internal static class MitredBendForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<MitredBend>("mitred bend", Read, Write);

    private static MitredBend? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length bendRadius = reader.Length("bendRadius");
        Angle angle = reader.Angle("angle");
        int joints = reader.Count("joints");
        return reader.Make(() => new MitredBend(outsideDiameter, bendRadius, angle, joints));
    }

    private static void Write(FormWriter writer, MitredBend bend)
    {
        writer.Length("outsideDiameter", bend.OutsideDiameter);
        writer.Length("bendRadius", bend.BendRadius);
        writer.Angle("angle", bend.Angle);
        writer.Count("joints", bend.Joints);
    }
}
