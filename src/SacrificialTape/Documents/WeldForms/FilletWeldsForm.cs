using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How fillet welds are read and written.</summary>
internal static class FilletWeldsForm
{
    internal static Form<WeldSeam> Form { get; } = Form<WeldSeam>.Of<FilletWelds>("fillet", Read, Write);

    private static FilletWelds? Read(FormReader reader)
    {
        Length seamLength = reader.Length("seamLength");
        Length leg = reader.Length("leg");
        int count = reader.Count("count");
        return reader.Make(() => new FilletWelds(seamLength, leg, count));
    }

    private static void Write(FormWriter writer, FilletWelds welds)
    {
        writer.Length("seamLength", welds.SeamLength);
        writer.Length("leg", welds.Leg);
        writer.Count("count", welds.Count);
    }
}
