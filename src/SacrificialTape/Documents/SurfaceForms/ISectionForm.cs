using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How an I section is read and written: by its designation in the library's tables, or by its dimensions.</summary>
internal static class ISectionForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<ISection>("I section", Read, Write);

    private static ISection? Read(FormReader reader)
    {
        if (reader.Has("size"))
        {
            return SectionBySize.Read<ISection>(reader);
        }

        Length height = reader.Length("height");
        Length width = reader.Length("width");
        Length webThickness = reader.Length("webThickness");
        Length flangeThickness = reader.Length("flangeThickness");
        Length rootRadius = reader.Length("rootRadius");
        Length length = reader.Length("length");
        return reader.Make(() => new ISection(height, width, webThickness, flangeThickness, rootRadius, length));
    }

    private static void Write(FormWriter writer, ISection section)
    {
        if (section.SizeBasis is not null)
        {
            SectionBySize.Write(writer, section);
            return;
        }

        writer.Length("height", section.Height);
        writer.Length("width", section.Width);
        writer.Length("webThickness", section.WebThickness);
        writer.Length("flangeThickness", section.FlangeThickness);
        writer.Length("rootRadius", section.RootRadius);
        writer.Length("length", section.Length);
    }
}
