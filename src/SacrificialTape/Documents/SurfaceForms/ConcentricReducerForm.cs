using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a concentric reducer is read and written: by the sizes of its ends where its length is that of the table, or by its dimensions.</summary>
internal static class ConcentricReducerForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<ConcentricReducer>("concentric reducer", Read, Write);

    private static ConcentricReducer? Read(FormReader reader)
    {
        if (reader.Has("largeSize"))
        {
            PipeSize large = PipeSizeText.Read(reader, "largeSize");
            PipeSize small = PipeSizeText.Read(reader, "smallSize");
            return reader.Make(() => new ConcentricReducer(large, small));
        }

        Length largeEnd = reader.Length("largeEnd");
        Length smallEnd = reader.Length("smallEnd");
        Length length = reader.Length("length");
        return reader.Make(() => new ConcentricReducer(largeEnd, smallEnd, length));
    }

    private static void Write(FormWriter writer, ConcentricReducer reducer)
    {
        if (reducer.LengthBasis is not null)
        {
            writer.Text("largeSize", PipeSizeText.OfAsme(reducer.LargeMm, writer.Place));
            writer.Text("smallSize", PipeSizeText.OfAsme(reducer.SmallMm, writer.Place));
            return;
        }

        writer.Length("largeEnd", reducer.LargeEnd);
        writer.Length("smallEnd", reducer.SmallEnd);
        writer.Length("length", reducer.Length);
    }
}
