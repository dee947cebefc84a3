using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How girth welds are read and written.</summary>
internal static class GirthWeldsForm
{
    internal static Form<WeldSeam> Form { get; } = Form<WeldSeam>.Of<GirthWelds>("girth", Read, Write);

    private static GirthWelds? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        int count = reader.Count("count");
        return reader.Make(() => new GirthWelds(outsideDiameter, count));
    }

    private static void Write(FormWriter writer, GirthWelds welds)
    {
        writer.Length("outsideDiameter", welds.OutsideDiameter);
        writer.Count("count", welds.Count);
    }
}
