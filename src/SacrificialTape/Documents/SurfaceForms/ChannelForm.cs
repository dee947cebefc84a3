using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a channel is read and written: by its designation in the library's tables, or by its dimensions.</summary>
internal static class ChannelForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<Channel>("channel", Read, Write);

    private static Channel? Read(FormReader reader)
    {
        if (reader.Has("size"))
        {
            return SectionBySize.Read<Channel>(reader);
        }

        Length height = reader.Length("height");
        Length width = reader.Length("width");
        Length webThickness = reader.Length("webThickness");
        Length flangeThickness = reader.Length("flangeThickness");
        Length rootRadius = reader.Length("rootRadius");
        Length toeRadius = reader.Length("toeRadius");
        Angle taper = reader.Angle("taper");
        Length length = reader.Length("length");
        return reader.Make(() => Channel.WithTaperedFlanges(height, width, webThickness, flangeThickness, rootRadius, toeRadius, taper, length));
    }

    private static void Write(FormWriter writer, Channel section)
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
        writer.Length("toeRadius", section.ToeRadius);
        writer.Angle("taper", section.Taper);
        writer.Length("length", section.Length);
    }
}
