using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>Sections that were taken from the library's tables are read and written by their designation.</summary>
internal static class SectionBySize
{
    internal static TSection? Read<TSection>(FormReader reader)
        where TSection : Section
    {
        string size = reader.Text("size");
        Length length = reader.Length("length");
        return reader.Make(() => SectionSizes.Find(size).OfLength(length) as TSection
            ?? throw FormReader.Refused("size", $"{size} is a section of another kind."));
    }

    internal static void Write(FormWriter writer, Section section)
    {
        SectionSize size = SectionSizes.All.FirstOrDefault(size => size.Basis.Equals(section.SizeBasis) && size.OfLength(section.Length).Equals(section))
            ?? throw new ArgumentException($"{writer.Place}: no size of the tables is {section.Description}.");
        writer.Text("size", size.Designation);
        writer.Length("length", section.Length);
    }
}
