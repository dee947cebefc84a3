using SacrificialTape.Galvanic;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How an end of tape beside steel is read and written.</summary>
internal static class TapeEndForm
{
    internal static TapeEnd? Read(FormReader reader)
    {
        Length bareMargin = reader.Length("bareMargin");
        Length zincWidth = reader.Length("zincWidth");
        return reader.Make(() => new TapeEnd(bareMargin, zincWidth));
    }

    internal static void Write(FormWriter writer, TapeEnd end)
    {
        writer.Length("bareMargin", end.BareMargin);
        writer.Length("zincWidth", end.ZincWidth);
    }
}
