using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>The readings of one place at one time, with their outliers flagged and the statistics with and without them.</summary>
/// <remarks>
/// <para>2 to 10 000 readings of the outermost layer; foil under it is untouched. A reading thicker than the foil and its
/// tolerance leaves a finding; one beyond 1.5 times that is refused: adhesive left on, or layers miscounted.</para>
/// <para>Outliers: Grubbs' two-sided test, again and again on what is left, until nothing is flagged or 3 are left. Two
/// outliers close together can hide each other; and a thin spot may be the very thing to find. So nothing is dropped: both
/// statistics are given, and the choice is the user's.</para>
/// </remarks>
/// <example><code source="ReadingsToLifePage.cs" region="readings" /></example>
public sealed record FoilReadings : IHasWorkings
{
    /// <summary>Judgement: adhesive on thin foil adds a third, a layer missed doubles.</summary>
    internal const double RefusedAbove = 1.5;

    private const int FewestTested = 3;

    /// <summary>Takes in readings.</summary>
    /// <param name="foil">The foil as it was supplied.</param>
    /// <param name="readings">2 to 10 000 readings.</param>
    /// <param name="significance">How seldom the test may flag a reading of a sound, normal set: more than 0, at most 0.2; 0.05 is usual.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are too few or too many readings, one is far thicker than the foil, or the significance is outside its range.</exception>
    public FoilReadings(Foil foil, IEnumerable<FoilReading> readings, Probability significance)
    {
        ValueList<FoilReading> allReadings = readings.Listed();
        ArgumentNullException.ThrowIfNull(foil);
        AcceptedRange.AboveUpTo(0, 0.2, string.Empty).Check(significance.Fraction, nameof(significance));
        AcceptedRange.Between(2, ToleranceFactor.MostReadings, "readings")
            .Noting("one reading has no scatter; its rate alone: SingleReading").Check(allReadings.Count, nameof(readings));
        this.Foil = foil;
        this.Readings = allReadings;
        this.Significance = significance;
        foreach (FoilReading reading in allReadings)
        {
            CheckThickness(foil, reading.Um, nameof(readings));
        }

        this.All = new ReadingStatistics(new ValueList<Length>(allReadings.Select(static reading => reading.Thickness)));
        this.Outliers = this.Flag();
        this.WithoutOutliers = this.Outliers.Count == 0
            ? null
            : new ReadingStatistics(new ValueList<Length>(this.Unflagged().Select(at => allReadings[at].Thickness)));
    }

    /// <summary>The foil as it was supplied.</summary>
    public Foil Foil { get; }

    /// <summary>The readings in the order given.</summary>
    public ValueList<FoilReading> Readings { get; }

    /// <summary>Significance of the test for outliers.</summary>
    public Probability Significance { get; }

    /// <summary>Statistics of all readings.</summary>
    public ReadingStatistics All { get; }

    /// <summary>The readings that the test flags, the farthest first.</summary>
    public ValueList<FlaggedReading> Outliers { get; }

    /// <summary>Statistics without those flagged; null when none is.</summary>
    public ReadingStatistics? WithoutOutliers { get; }

    /// <summary>Critical distance of Grubbs' two-sided test, in standard deviations.</summary>
    /// <param name="readings">Number of readings, 3 to 10 000.</param>
    /// <param name="significance">More than 0, at most 0.2.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    [BasisOf(typeof(ReadingFormulas), nameof(ReadingFormulas.Critical))]
    public static double CriticalDistance(int readings, Probability significance) => ReadingKernel.Critical(
        (int)AcceptedRange.Between(FewestTested, ToleranceFactor.MostReadings, "readings").Check(readings),
        AcceptedRange.AboveUpTo(0, 0.2, string.Empty).Check(significance.Fraction, nameof(significance)),
        default(NoSteps));

    /// <summary>What must be said of the readings before anything is made of them.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        double most = MostUm(this.Foil);
        for (int i = 0; i < this.Readings.Count; i++)
        {
            FoilReading reading = this.Readings[i];
            string named = string.Create(CultureInfo.InvariantCulture, $"{subject}, reading {i + 1}");
            if (WithAllowance.Above(reading.Um, most))
            {
                yield return rules[RuleIds.ReadingAboveFoil].State(
                    named, new Measure(reading.Um, TradeUnit.Micrometer), new Measure(most, TradeUnit.Micrometer));
            }

            if (!reading.Preparation.ProductsRemoved)
            {
                yield return rules[RuleIds.ReadingNotCleaned].State(named);
            }
        }

        foreach (FlaggedReading outlier in this.Outliers)
        {
            yield return rules[RuleIds.ReadingOutlier].State(
                string.Create(CultureInfo.InvariantCulture, $"{subject}, reading {outlier.Number}"), new Measure(outlier.Reading.Um, TradeUnit.Micrometer));
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var all = new List<WorkingStep>(this.All.ShowWorkings().Steps);
        for (int i = 0; i < this.Outliers.Count; i++)
        {
            var steps = new StepList();
            (double mean, double deviation) = this.StatisticsWithout(this.Outliers.Take(i), steps);
            _ = ReadingKernel.Distance(this.Outliers[i].Reading.Um, mean, deviation, steps);
            _ = ReadingKernel.Critical(this.Readings.Count - i, this.Significance.Fraction, steps);
            all.AddRange(steps.Under("outlier").Steps);
        }

        if (this.WithoutOutliers is { } without)
        {
            all.AddRange(without.ShowWorkings().Steps);
        }

        return new Workings("Readings with and without outliers", new ValueList<WorkingStep>(all));
    }

    /// <summary>The readings in a few words.</summary>
    public override string ToString() => this.WithoutOutliers is { } without
        ? $"{this.All}; without {this.Outliers.Count} outlier(s): {without}"
        : $"{this.All}; no outlier";

    internal static double MostUm(Foil foil) => (2 * foil.ThicknessMm - foil.LeastThicknessMm) * 1000;

    internal static double CheckThickness(Foil foil, double um, string parameter) => AcceptedRange.AboveUpTo(0, RefusedAbove * MostUm(foil), "um")
        .Noting("far thicker than the foil supplied: is adhesive left on, or were layers miscounted?").Check(um, parameter);

    private IEnumerable<int> Unflagged()
    {
        HashSet<int> flagged = [.. this.Outliers.Select(static outlier => outlier.Number - 1)];
        return Enumerable.Range(0, this.Readings.Count).Where(at => !flagged.Contains(at));
    }

    private ValueList<FlaggedReading> Flag()
    {
        var flagged = new List<FlaggedReading>();
        var left = Enumerable.Range(0, this.Readings.Count).ToList();
        while (left.Count >= FewestTested)
        {
            (double mean, double deviation) = this.StatisticsWithout(flagged, default(NoSteps));

            // Scatter that is only rounding is none: equal readings flag nobody.
            if (!(deviation > mean * WithAllowance.RelativeAllowance))
            {
                break;
            }

            int farthest = left.MaxBy(at => Math.Abs(this.Readings[at].Um - mean));
            double distance = ReadingKernel.Distance(this.Readings[farthest].Um, mean, deviation, default(NoSteps));
            double critical = ReadingKernel.Critical(left.Count, this.Significance.Fraction, default(NoSteps));
            if (!WithAllowance.Above(distance, critical))
            {
                break;
            }

            flagged.Add(new FlaggedReading(farthest + 1, this.Readings[farthest], distance, critical));
            left.Remove(farthest);
        }

        return new ValueList<FlaggedReading>(flagged);
    }

    private (double Mean, double Deviation) StatisticsWithout<TSteps>(IEnumerable<FlaggedReading> flagged, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        HashSet<int> already = [.. flagged.Select(static outlier => outlier.Number - 1)];
        double[] um = [.. this.Readings.Where((_, at) => !already.Contains(at)).Select(static reading => reading.Um)];
        double mean = ReadingKernel.MeanUm(um, steps);
        return (mean, ReadingKernel.DeviationUm(um, mean, steps));
    }
}
