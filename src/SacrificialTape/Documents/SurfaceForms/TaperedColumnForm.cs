using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a tapered column is read and written.</summary>
internal static class TaperedColumnForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<TaperedColumn>("tapered column", Read, Write);

    private static TaperedColumn? Read(FormReader reader)
    {
        Length footOutsideDiameter = reader.Length("footOutsideDiameter");
        Length topOutsideDiameter = reader.Length("topOutsideDiameter");
        Length height = reader.Length("height");
        BasePlate? basePlate = reader.OptionalObject("basePlate", BasePlateForm.Read);
        return reader.Make(() => new TaperedColumn(footOutsideDiameter, topOutsideDiameter, height, basePlate));
    }

    private static void Write(FormWriter writer, TaperedColumn column)
    {
        writer.Length("footOutsideDiameter", column.FootOutsideDiameter);
        writer.Length("topOutsideDiameter", column.TopOutsideDiameter);
        writer.Length("height", column.Height);
        if (column.BasePlate is { } plate)
        {
            writer.Object("basePlate", plate, BasePlateForm.Write);
        }
    }
}
