using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How reducers of both kinds are read and written: by the sizes of their ends where the length is that of the table, or by their dimensions.</summary>
internal static class ReducerForm
{
    internal static T? Read<T>(FormReader reader, Func<PipeSize, PipeSize, T> bySizes, Func<Length, Length, Length, T> byDimensions)
        where T : Surface
    {
        if (reader.Has("largeSize"))
        {
            PipeSize large = PipeSizeText.Read(reader, "largeSize");
            PipeSize small = PipeSizeText.Read(reader, "smallSize");
            return reader.Make(() => bySizes(large, small));
        }

        Length largeEnd = reader.Length("largeEnd");
        Length smallEnd = reader.Length("smallEnd");
        Length length = reader.Length("length");
        return reader.Make(() => byDimensions(largeEnd, smallEnd, length));
    }

    internal static void Write(FormWriter writer, bool byTable, Length largeEnd, Length smallEnd, Length length)
    {
        if (byTable)
        {
            writer.Text("largeSize", PipeSizeText.OfAsme(largeEnd.Millimeters, writer.Place));
            writer.Text("smallSize", PipeSizeText.OfAsme(smallEnd.Millimeters, writer.Place));
            return;
        }

        writer.Length("largeEnd", largeEnd);
        writer.Length("smallEnd", smallEnd);
        writer.Length("length", length);
    }
}
