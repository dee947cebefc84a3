using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a washer, or many like it, is read and written.</summary>
internal static class WasherForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<Washer>("washer", Read, Write);

    private static Washer? Read(FormReader reader)
    {
        Length outsideDiameter = reader.Length("outsideDiameter");
        Length insideDiameter = reader.Length("insideDiameter");
        int count = reader.Count("count");
        return reader.Make(() => new Washer(outsideDiameter, insideDiameter, count));
    }

    private static void Write(FormWriter writer, Washer washer)
    {
        writer.Length("outsideDiameter", washer.OutsideDiameter);
        writer.Length("insideDiameter", washer.InsideDiameter);
        writer.Count("count", washer.Count);
    }
}
