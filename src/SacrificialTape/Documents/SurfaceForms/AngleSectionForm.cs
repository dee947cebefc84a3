using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How an angle section is read and written: by its designation in the library's tables, or by its dimensions.</summary>
internal static class AngleSectionForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<AngleSection>("angle section", Read, Write);

    private static AngleSection? Read(FormReader reader)
    {
        if (reader.Has("size"))
        {
            return SectionBySize.Read<AngleSection>(reader);
        }

        Length longLeg = reader.Length("longLeg");
        Length shortLeg = reader.Length("shortLeg");
        Length thickness = reader.Length("thickness");
        Length rootRadius = reader.Length("rootRadius");
        Length toeRadius = reader.Length("toeRadius");
        Length length = reader.Length("length");
        return reader.Make(() => new AngleSection(longLeg, shortLeg, thickness, rootRadius, toeRadius, length));
    }

    private static void Write(FormWriter writer, AngleSection section)
    {
        if (section.SizeBasis is not null)
        {
            SectionBySize.Write(writer, section);
            return;
        }

        writer.Length("longLeg", section.LongLeg);
        writer.Length("shortLeg", section.ShortLeg);
        writer.Length("thickness", section.Thickness);
        writer.Length("rootRadius", section.RootRadius);
        writer.Length("toeRadius", section.ToeRadius);
        writer.Length("length", section.Length);
    }
}
