using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>Sections that were taken from the library's tables are read and written by their designation.</summary>
internal static class SectionBySize
{
    private const int Near = 4;
    private static readonly Length AnyLength = Length.FromMeters(1);

    internal static TSection? Read<TSection>(FormReader reader)
        where TSection : Section
    {
        string size = reader.Text("size");
        Length length = reader.Length("length");
        if (size.Length > 0 && Find<TSection>(size) is null)
        {
            reader.Context.Faults.Add(reader.Node.Members["size"], Unknown<TSection>(size));
        }

        return reader.Make(() => (TSection)Find<TSection>(size)!.OfLength(length));
    }

    private static SectionSize? Find<TSection>(string size)
        where TSection : Section => SizesOf<TSection>().FirstOrDefault(one => Bare(one.Designation) == Bare(size));

    // Of the 76 sizes only those that may have been meant.
    private static string Unknown<TSection>(string size)
        where TSection : Section
    {
        if (SectionSizes.All.FirstOrDefault(one => Bare(one.Designation) == Bare(size)) is { } other)
        {
            return $"{other.Designation} is a section of another kind.";
        }

        IEnumerable<string> near = NearestName.InOrder(size, SizesOf<TSection>().Select(static one => one.Designation)).Take(Near);
        return $"'{DocumentTree.Short(size)}' is not among the sizes of this kind that are known here; the nearest are {string.Join(", ", near)}. Or give its dimensions instead.";
    }

    private static IEnumerable<SectionSize> SizesOf<TSection>()
        where TSection : Section => SectionSizes.All.Where(static one => one.OfLength(AnyLength) is TSection);

    private static string Bare(string designation) => designation.Replace(" ", string.Empty, StringComparison.Ordinal).ToUpperInvariant();

    internal static void Write(FormWriter writer, Section section)
    {
        SectionSize size = SectionSizes.All.FirstOrDefault(size => size.Basis.Equals(section.SizeBasis) && size.OfLength(section.Length).Equals(section))
            ?? throw new ArgumentException($"{writer.Place}: no size of the tables is {section.Description}.");
        writer.Text("size", size.Designation);
        writer.Length("length", section.Length);
    }
}
