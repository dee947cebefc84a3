using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How longitudinal welds are read and written.</summary>
internal static class LongitudinalWeldsForm
{
    internal static Form<WeldSeam> Form { get; } = Form<WeldSeam>.Of<LongitudinalWelds>("longitudinal", Read, Write);

    private static LongitudinalWelds? Read(FormReader reader)
    {
        Length seamLength = reader.Length("seamLength");
        int count = reader.Count("count");
        return reader.Make(() => new LongitudinalWelds(seamLength, count));
    }

    private static void Write(FormWriter writer, LongitudinalWelds welds)
    {
        writer.Length("seamLength", welds.SeamLength);
        writer.Count("count", welds.Count);
    }
}
