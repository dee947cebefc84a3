using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>Some common sections by designation.</summary>
/// <remarks>
/// A few of each series, not a catalogue: for others give the dimensions. Each says on what it rests; recalled ones are to
/// be checked before use. Printed areas per metre were compared and not copied, since published tables hold wrong ones.
/// </remarks>
public static class SectionSizes
{
    /// <summary>All that are known here.</summary>
    public static ValueList<SectionSize> All { get; } =
        new(SectionTable.Rows.ToArray().Select(static row => new SectionSize(row)));

    /// <summary>Finds a section by its designation.</summary>
    /// <param name="designation">As written in <see cref="All"/>; case and spaces do not count.</param>
    /// <exception cref="ArgumentException">It is not known here; the message names those that are.</exception>
    public static SectionSize Find(string designation)
    {
        ArgumentNullException.ThrowIfNull(designation);
        string wanted = Bare(designation);
        return All.FirstOrDefault(size => Bare(size.Designation).Equals(wanted, StringComparison.OrdinalIgnoreCase))
            ?? throw new ArgumentException(
                $"'{designation}' is not known here; known are {string.Join(", ", All)}. Give its dimensions instead.", nameof(designation));
    }

    private static string Bare(string text) => text.Replace(" ", string.Empty, StringComparison.Ordinal);
}
