using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How the base plate of a column is read and written.</summary>
internal static class BasePlateForm
{
    internal static BasePlate? Read(FormReader reader)
    {
        Length width = reader.Length("width");
        Length depth = reader.Length("depth");
        Length thickness = reader.Length("thickness");
        int boltHoles = reader.Count("boltHoles");
        Length boltHoleDiameter = reader.Length("boltHoleDiameter");
        return reader.Make(() => new BasePlate(width, depth, thickness, boltHoles, boltHoleDiameter));
    }

    internal static void Write(FormWriter writer, BasePlate plate)
    {
        writer.Length("width", plate.Width);
        writer.Length("depth", plate.Depth);
        writer.Length("thickness", plate.Thickness);
        writer.Count("boltHoles", plate.BoltHoles);
        writer.Length("boltHoleDiameter", plate.BoltHoleDiameter);
    }
}
