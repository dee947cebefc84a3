using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Wrapping;

/// <summary>Pieces by their length in whole micrometres; of each length the mean of what is cover and what is trim.</summary>
internal sealed class FaceTally
{
    private readonly SortedDictionary<long, (double LengthMm, int Count, double CoverMm, double TrimMm)> groups = [];

    /// <summary>Adds like pieces; says whether their length is new.</summary>
    internal void Add(double lengthMm, int count, double coverMm, double trimMm)
    {
        long key = -(long)Math.Round(lengthMm * 1e3, MidpointRounding.AwayFromZero); // the longest first
        (double LengthMm, int Count, double CoverMm, double TrimMm) sum = this.groups.GetValueOrDefault(key);
        this.groups[key] = (lengthMm, sum.Count + count, sum.CoverMm + (count * coverMm), sum.TrimMm + (count * trimMm));
    }

    internal ValueList<Strip> Strips(StripStock stock, int passes) => new(this.groups.Values.Select(one => Strip.Computed(
        stock, one.LengthMm, one.Count * passes, StripPurpose.Other, true, one.CoverMm / one.Count, Math.Max(0, one.TrimMm / one.Count))));
}
