using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>One side of an edge, as it stands in a list.</summary>
internal sealed record SideLength(Length Length)
{
    internal static SideLength? Read(FormReader reader)
    {
        Length length = reader.Length("length");
        return reader.Make(() => new SideLength(length));
    }

    internal static void Write(FormWriter writer, SideLength side) => writer.Length("length", side.Length);
}
