using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>
/// Where the edge of a strip may lie on the outline of a section: on flat faces, a margin away from the folds at their
/// ends. Places count on without end round the outline.
/// </summary>
internal sealed class LapZones
{
    private readonly double[] low;
    private readonly double[] high;

    private LapZones(double perimeterMm, double[] low, double[] high)
    {
        this.PerimeterMm = perimeterMm;
        this.SlackMm = perimeterMm * WithAllowance.RelativeAllowance;
        this.low = low;
        this.high = high;
    }

    internal double PerimeterMm { get; }

    /// <summary>Places closer than this are one place.</summary>
    internal double SlackMm { get; }

    internal int Count => this.low.Length;

    internal static LapZones Of(SectionOutline outline, double marginMm)
    {
        var low = new List<double>();
        var high = new List<double>();
        double start = 0;
        foreach (Fold fold in outline.Folds)
        {
            if (WithAllowance.AtLeast(fold.PositionMm - start, 2 * marginMm))
            {
                low.Add(start + marginMm);
                high.Add(Math.Max(start + marginMm, fold.PositionMm - marginMm));
            }

            start = fold.PositionMm + fold.RunMm;
        }

        return new(outline.PerimeterMm, [.. low], [.. high]);
    }

    /// <summary>Beginning of a zone, the index counting on round the outline.</summary>
    internal double LowMm(int zone) => this.low[Wrapped(zone, this.Count)] + (Rounds(zone, this.Count) * this.PerimeterMm);

    /// <summary>End of a zone, the index counting on round the outline.</summary>
    internal double HighMm(int zone) => this.high[Wrapped(zone, this.Count)] + (Rounds(zone, this.Count) * this.PerimeterMm);

    /// <summary>The place where an edge may lie that is next before a given one, or there.</summary>
    internal double BackMm(double placeMm)
    {
        double rounds = Math.Floor(placeMm / this.PerimeterMm);
        double place = placeMm - (rounds * this.PerimeterMm);
        for (int zone = this.Count - 1; zone >= 0; zone--)
        {
            if (this.low[zone] <= place + this.SlackMm)
            {
                return Math.Max(this.low[zone], Math.Min(place, this.high[zone])) + (rounds * this.PerimeterMm);
            }
        }

        return this.high[^1] + ((rounds - 1) * this.PerimeterMm);
    }

    /// <summary>Whether an edge may lie there.</summary>
    internal bool Holds(double placeMm) => placeMm - this.BackMm(placeMm) <= this.SlackMm;

    private static int Wrapped(int zone, int count) => ((zone % count) + count) % count;

    private static int Rounds(int zone, int count) => (zone - Wrapped(zone, count)) / count;
}
