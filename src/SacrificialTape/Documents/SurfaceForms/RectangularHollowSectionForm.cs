using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a rectangular hollow section is read and written: by its designation, by its dimensions and measured corners, or by the rule for its corners.</summary>
internal static class RectangularHollowSectionForm
{
    internal static SurfaceForm Form { get; } = SurfaceForm.Of<RectangularHollowSection>("rectangular hollow section", Read, Write);

    private static RectangularHollowSection? Read(FormReader reader)
    {
        if (reader.Has("size"))
        {
            return SectionBySize.Read<RectangularHollowSection>(reader);
        }

        Length outsideHeight = reader.Length("outsideHeight");
        Length outsideWidth = reader.Length("outsideWidth");
        Length wallThickness = reader.Length("wallThickness");
        Length length = reader.Length("length");
        HollowCorners corners = reader.Word("corners", JobWords.HollowCorners);
        if (corners == HollowCorners.Measured)
        {
            Length outsideCornerRadius = reader.Length("outsideCornerRadius");
            return reader.Make(() => RectangularHollowSection.FromOutside(outsideHeight, outsideWidth, wallThickness, outsideCornerRadius, length));
        }

        return reader.Make(() => RectangularHollowSection.ByRule(outsideHeight, outsideWidth, wallThickness, corners, length, null));
    }

    private static void Write(FormWriter writer, RectangularHollowSection section)
    {
        if (section.SizeBasis is not null)
        {
            SectionBySize.Write(writer, section);
            return;
        }

        OutsideLimit.Hold(Math.Max(section.OutsideHeight.Millimeters, section.OutsideWidth.Millimeters), writer.Place);
        writer.Length("outsideHeight", section.OutsideHeight);
        writer.Length("outsideWidth", section.OutsideWidth);
        writer.Length("wallThickness", section.WallThickness);
        writer.Word("corners", section.Corners, JobWords.HollowCorners);
        if (section.Corners == HollowCorners.Measured)
        {
            writer.Length("outsideCornerRadius", section.OutsideCornerRadius);
        }

        writer.Length("length", section.Length);
    }
}
