using System.Globalization;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>Remaining life from readings, along a loss law drawn through what was lost by now.</summary>
/// <remarks>
/// <para>Age: more than 0, at most 1000 a. Required: zero or more, less than the least foil. The law's loss must be in proportion to the
/// first-year rate, as that of every law here is. Confidence: 0.5 to 0.9999, two-sided: the mean lies within with that
/// confidence, so it lies above the earliest with half of what is left besides. The foil may have been thicker or thinner
/// than nominal by its tolerance: the earliest life counts the loss from the thickest, the latest from the thinnest.</para>
/// <para>It is the life of the layer that was read. Layers under it begin anew when it is gone. A life that rests on no loss
/// is undetermined: null, never endless.</para>
/// </remarks>
/// <example><code source="ReadingsToLifePage.cs" region="life" /></example>
public sealed record RemainingLifeFromReadings : IHasWorkings
{
    private readonly StoredNumber ageYears;
    private readonly StoredNumber requiredUm;
    private readonly StoredNumber halfUm;
    private readonly StoredNumber lawYears;

    /// <summary>Works out the remaining life.</summary>
    /// <param name="foil">The foil as it was supplied.</param>
    /// <param name="statistics">The readings, with or without outliers as the user decides.</param>
    /// <param name="age">Time since the tape was laid.</param>
    /// <param name="required">Thickness below which the foil counts as used up; see <see cref="PerforationLimit"/>.</param>
    /// <param name="law">How loss grows with time.</param>
    /// <param name="coverage">The share of the foil above the limit for thin spots, 0.5 to 0.9999.</param>
    /// <param name="confidence">Of the mean, and of the limit for thin spots, 0.5 to 0.9999.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the law does not reach so far.</exception>
    public RemainingLifeFromReadings(
        Foil foil, ReadingStatistics statistics, Duration age, Length required, ILossLaw law, Probability coverage, Probability confidence)
    {
        ArgumentNullException.ThrowIfNull(foil);
        ArgumentNullException.ThrowIfNull(statistics);
        ArgumentNullException.ThrowIfNull(law);
        double least = foil.LeastThicknessMm * 1000;
        this.Foil = foil;
        this.Statistics = statistics;
        this.Law = law;
        this.ageYears = new StoredNumber(ThicknessPoint.CheckAge(age));
        this.requiredUm = new StoredNumber(AcceptedRange.FromBelow(0, least, "um").Noting("the least foil supplied")
            .Check(UnitConversions.Micrometers(required), nameof(required)));
        FoilReadings.CheckThickness(foil, statistics.Um(statistics.Count - 1), nameof(statistics));
        this.ThinSpots = new ThicknessLimit(statistics, coverage, confidence);
        this.halfUm = new StoredNumber(RemainingLifeKernel.HalfWidthUm(confidence.Fraction, statistics.DeviationUm, statistics.Count, default(NoSteps)));
        this.lawYears = new StoredNumber(UnitConversions.Micrometers(
            law.Loss(CorrosionRate.FromMicrometersPerYear(1), UnitConversions.FromYears(this.ageYears.Bare))));
        this.Mean = AsDuration(this.Years(this.NominalUm, statistics.MeanUm, default(NoSteps)));
        this.Earliest = AsDuration(this.Years(this.ThickestUm, statistics.MeanUm - this.halfUm.Bare, default(NoSteps)));
        this.Latest = AsDuration(this.Years(least, statistics.MeanUm + this.halfUm.Bare, default(NoSteps)));
        this.OfThinSpots = AsDuration(this.Years(this.ThickestUm, this.ThinSpots.Um, default(NoSteps)));
    }

    /// <summary>The foil as it was supplied.</summary>
    public Foil Foil { get; }

    /// <summary>The readings.</summary>
    public ReadingStatistics Statistics { get; }

    /// <summary>How loss grows with time.</summary>
    public ILossLaw Law { get; }

    /// <summary>The lower tolerance limit of the thickness.</summary>
    public ThicknessLimit ThinSpots { get; }

    /// <summary>Time since the tape was laid.</summary>
    public Duration Age => UnitConversions.FromYears(this.ageYears.Bare);

    /// <summary>Thickness required.</summary>
    public Length Required => Length.FromMicrometers(this.requiredUm.Bare);

    /// <summary>Half the confidence interval of the mean thickness.</summary>
    public Length HalfWidth => Length.FromMicrometers(this.halfUm.Bare);

    /// <summary>Nominal foil less the mean reading; below zero when the readings are thicker.</summary>
    public Length MeanLoss => Length.FromMicrometers(RemainingLifeKernel.LostUm(this.NominalUm, this.Statistics.MeanUm, default(NoSteps)));

    /// <summary>First-year rate of the law through the mean loss; null when the readings show no loss.</summary>
    public CorrosionRate? FirstYear => this.MeanRateUm > 0 ? CorrosionRate.FromMicrometersPerYear(this.MeanRateUm) : null;

    /// <summary>First-year rates of the law through the ends of the interval of the mean, none below zero; null when even the upper shows no loss.</summary>
    public RateRange? FirstYearRange => this.HighestRateUm > 0
        ? new RateRange(CorrosionRate.FromMicrometersPerYear(Math.Max(0, this.LowestRateUm)), CorrosionRate.FromMicrometersPerYear(this.HighestRateUm))
        : null;

    /// <summary>Remaining life of the mean; null when it is undetermined.</summary>
    public Duration? Mean { get; }

    /// <summary>The earliest end of the interval: the mean thinner, the foil supplied thicker; null when it is undetermined.</summary>
    public Duration? Earliest { get; }

    /// <summary>The latest end of the interval; null when it is undetermined.</summary>
    public Duration? Latest { get; }

    /// <summary>Remaining life at the lower tolerance limit: that of the thin spots, which go through first; null when it is undetermined.</summary>
    public Duration? OfThinSpots { get; }

    internal double MeanRateUm => this.RateUm(this.NominalUm, this.Statistics.MeanUm);

    internal double HighestRateUm => this.RateUm(this.ThickestUm, this.Statistics.MeanUm - this.halfUm.Bare);

    internal double LowestRateUm => this.RateUm(this.Foil.LeastThicknessMm * 1000, this.Statistics.MeanUm + this.halfUm.Bare);

    private double NominalUm => this.Foil.ThicknessMm * 1000;

    private double ThickestUm => FoilReadings.MostUm(this.Foil);

    /// <summary>What must be said of the life.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.Mean is not { } mean)
        {
            yield return rules[RuleIds.LifeUndetermined].State(subject);
        }
        else if (UnitConversions.Years(mean) == 0)
        {
            yield return rules[RuleIds.FoilUsedUp].State(
                subject, new Measure(this.Statistics.MeanUm, TradeUnit.Micrometer), new Measure(this.requiredUm.Bare, TradeUnit.Micrometer));
        }

        foreach (Finding finding in this.ThinSpots.Judge(this.Required, rules, subject))
        {
            yield return finding;
        }

        if (this.Law is IJudgedLossLaw judged && this.Latest is { } latest)
        {
            foreach (Finding finding in judged.Judge(Lifetime.OfYears(this.ageYears.Bare + UnitConversions.Years(latest)), rules, subject))
            {
                yield return finding;
            }
        }

        if (this.Law.Basis.Kind == BasisKind.Recalled)
        {
            yield return rules[RuleIds.RecalledLifeValue].State(subject);
        }

        yield return rules[RuleIds.NoPublishedLife].State(subject);
    }

    /// <summary>The workings of the mean, then of the earliest end of its interval, then of the thin spots.</summary>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Years(this.NominalUm, this.Statistics.MeanUm, steps);
        double half = RemainingLifeKernel.HalfWidthUm(this.ThinSpots.Factor.Confidence.Fraction, this.Statistics.DeviationUm, this.Statistics.Count, steps);
        _ = this.Years(this.ThickestUm, this.Statistics.MeanUm - half, steps);
        var all = new List<WorkingStep>(this.Statistics.ShowWorkings().Steps);
        all.AddRange(steps.Under("life").Steps);
        all.AddRange(this.ThinSpots.ShowWorkings().Steps);
        var thin = new StepList();
        _ = this.Years(this.ThickestUm, this.ThinSpots.Um, thin);
        all.AddRange(thin.Under("thin spots").Steps);
        return new Workings("Remaining life from readings, " + this.Law.Name, new ValueList<WorkingStep>(all));
    }

    /// <summary>The lives in a few words.</summary>
    public override string ToString() =>
        $"mean {Said(this.Mean)}, {Said(this.Earliest)} to {Said(this.Latest)}; thin spots {Said(this.OfThinSpots)}";

    private static Duration? AsDuration(double years) => double.IsNaN(years) ? null : UnitConversions.FromYears(years);

    private static string Said(Duration? life) => life is { } known
        ? string.Create(CultureInfo.InvariantCulture, $"{UnitConversions.Years(known):0.0} a")
        : "undetermined";

    private double RateUm(double suppliedUm, double nowUm) => (suppliedUm - nowUm) / this.lawYears.Bare;

    private double Years<TSteps>(double suppliedUm, double nowUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (nowUm <= this.requiredUm.Bare)
        {
            return 0;
        }

        double lost = RemainingLifeKernel.LostUm(suppliedUm, nowUm, steps);
        if (!(lost > 0))
        {
            return double.NaN;
        }

        double rate = RemainingLifeKernel.RefittedRateUm(lost, this.lawYears.Bare, steps);
        double all = this.Law.TimeToLoss(
            CorrosionRate.FromMicrometersPerYear(rate), Length.FromMicrometers(suppliedUm - this.requiredUm.Bare)).Years;

        // A rounding of a law must not make a life negative.
        return RemainingLifeKernel.AfterAge(Math.Max(all, this.ageYears.Bare), this.ageYears.Bare, steps);
    }
}
