using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a straight pipe is read and written.</summary>
internal static class StraightPipeForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<StraightPipe>("pipe", Read, Write);

    private static StraightPipe? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length length = reader.Length("length");
        return reader.Make(() => new StraightPipe(outsideDiameter, length));
    }

    private static void Write(FormWriter writer, StraightPipe pipe)
    {
        writer.Length("outsideDiameter", pipe.OutsideDiameter);
        writer.Length("length", pipe.Length);
    }
}
