using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a T section is read and written.</summary>
internal static class TeeSectionForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<TeeSection>("T section", Read, Write);

    private static TeeSection? Read(FormReader reader)
    {
        Length height = reader.Length("height");
        Length width = reader.Length("width");
        Length stemThickness = reader.Length("stemThickness");
        Length flangeThickness = reader.Length("flangeThickness");
        Length rootRadius = reader.Length("rootRadius");
        Length length = reader.Length("length");
        return reader.Make(() => new TeeSection(height, width, stemThickness, flangeThickness, rootRadius, length));
    }

    private static void Write(FormWriter writer, TeeSection section)
    {
        writer.Length("height", section.Height);
        writer.Length("width", section.Width);
        writer.Length("stemThickness", section.StemThickness);
        writer.Length("flangeThickness", section.FlangeThickness);
        writer.Length("rootRadius", section.RootRadius);
        writer.Length("length", section.Length);
    }
}
