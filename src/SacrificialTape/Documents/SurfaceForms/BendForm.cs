using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a bend is read and written.</summary>
internal static class BendForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<Bend>("bend", Read, Write);

    private static Bend? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length bendRadius = reader.Length("bendRadius");
        Angle angle = reader.Angle("angle");
        return reader.Make(() => new Bend(outsideDiameter, bendRadius, angle));
    }

    private static void Write(FormWriter writer, Bend bend)
    {
        writer.Length("outsideDiameter", bend.OutsideDiameter);
        writer.Length("bendRadius", bend.BendRadius);
        writer.Angle("angle", bend.Angle);
    }
}
