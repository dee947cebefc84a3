using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>How likely each life of the zinc is, in the open air by its own corrosion.</summary>
/// <remarks>
/// <para>Layers follow one another, each beginning anew, as in <see cref="LifeEstimate"/>; the earliest life there stays the
/// default to design for. Confidences from 0.000001 to 0.999999; error of a probability some 1e-10.</para>
/// <para>There is no mean life: a few places with next to no corrosion last for centuries and pull the mean far above the
/// median, so that fewer than half of all lives reach it. Ask for the life that is reached with a confidence.</para>
/// </remarks>
/// <example><code source="LifeWithUncertaintyPage.cs" region="all-uncertain" /></example>
public sealed record LifeDistribution : IHasWorkings
{
    private const double Surest = 0.999999;

    private readonly LifeSpread spread;

    /// <summary>Describes a life with its uncertainty.</summary>
    /// <param name="foil">The foil; its tolerance counts to both sides of nominal here.</param>
    /// <param name="layersEverywhere">The least number of layers over any spot, 0 to 100.</param>
    /// <param name="uncertainty">What is not known for certain.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of layers is outside its range.</exception>
    public LifeDistribution(Foil foil, int layersEverywhere, LifeUncertainty uncertainty)
    {
        ArgumentNullException.ThrowIfNull(foil);
        ArgumentNullException.ThrowIfNull(uncertainty);
        AcceptedRange.Between(0, LifeEstimate.MostLayers, "layers").Check(layersEverywhere);
        this.Foil = foil;
        this.LayersEverywhere = layersEverywhere;
        this.Uncertainty = uncertainty;
        this.spread = new LifeSpread(foil.ThicknessMm * 1000, (foil.ThicknessMm - foil.LeastThicknessMm) * 1000, uncertainty);
    }

    /// <summary>The foil.</summary>
    public Foil Foil { get; }

    /// <summary>The least number of layers over any spot.</summary>
    public int LayersEverywhere { get; }

    /// <summary>What is not known for certain.</summary>
    public LifeUncertainty Uncertainty { get; }

    /// <summary>
    /// The closed form, where there is one: only the rate is uncertain, and the law is linear or a power all along. Null else.
    /// </summary>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.LogNormalSpread))]
    public LogNormalLife? LogNormal => this.spread.IsOnePoint && this.Uncertainty.Growth.IsPurePower && this.LayersEverywhere > 0
        ? new LogNormalLife(
            this.YearsReached(0.5),
            SpreadKernel.LogNormalSpread(this.Uncertainty.Rate.Sigma, this.Uncertainty.Growth.Exponent?.Mean.Value ?? 1))
        : null;

    /// <summary>The life that is reached with a confidence: 0.9 gives the life that nine in ten such tapes reach.</summary>
    /// <param name="confidence">From 0.000001 to 0.999999.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.Inverse))]
    public Lifetime ReachedWith(Probability confidence) => Lifetime.OfYears(this.YearsReached(Confidence(confidence)));

    /// <summary>The life that a share of all lives falls short of: the tenth percentile is reached with 90 % confidence.</summary>
    /// <param name="shortfall">From 0.000001 to 0.999999.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.Inverse))]
    public Lifetime Percentile(Probability shortfall) => Lifetime.OfYears(this.YearsReached(1 - Confidence(shortfall)));

    /// <summary>How likely it is that a life is reached.</summary>
    /// <param name="required">The life.</param>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.Reached))]
    public Probability ChanceOf(Lifetime required) => Probability.FromFraction(
        required.Years == 0 ? 1
        : required.IsUnlimited || this.LayersEverywhere == 0 ? 0
        : this.spread.Reached(required.Years, this.LayersEverywhere - 1, 1));

    /// <summary>Holds the life against a requirement and the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="required">The life that is required.</param>
    /// <param name="confidence">How surely it is to be reached.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(Lifetime required, Probability confidence, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Probability chance = this.ChanceOf(required);
        if (WithAllowance.Below(chance.Fraction, confidence.Fraction))
        {
            yield return rules[RuleIds.ConfidenceNotReached].State(
                subject, new Measure(100 * chance.Fraction, TradeUnit.Percent), new Measure(100 * confidence.Fraction, TradeUnit.Percent));
        }

        if (this.Uncertainty.Rate.Basis.Kind == BasisKind.Recalled)
        {
            yield return rules[RuleIds.RecalledRate].State(subject);
        }

        if (this.Uncertainty.Growth.Basis.Kind == BasisKind.Recalled)
        {
            yield return rules[RuleIds.RecalledLifeValue].State(subject);
        }

        yield return rules[RuleIds.SpreadIsJudgement].State(subject);
        yield return rules[RuleIds.NoPublishedLife].State(subject);
    }

    /// <summary>The steps to the median life.</summary>
    public Workings ShowWorkings() => this.ShowReachedWith(Probability.FromFraction(0.5));

    /// <summary>
    /// The steps to the life that is reached with a confidence: closed for the rate with all else in its middle, then what
    /// the spread of the rest makes of it, by quadrature.
    /// </summary>
    /// <param name="confidence">From 0.000001 to 0.999999.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    public Workings ShowReachedWith(Probability confidence)
    {
        double wanted = Confidence(confidence);
        UncertainRate given = this.Uncertainty.Rate;
        var head = new StepList();
        double usable = this.Uncertainty.Usable.Likeliest.Fraction;
        double zinc = usable * this.Foil.ThicknessMm * 1000;
        double rate = SpreadKernel.RateAt(given.Median, given.Sigma, wanted, head);
        head.Add(LossFormulas.ZincPerLayer, [usable, this.Foil.ThicknessMm * 1000], zinc);
        var all = new List<WorkingStep>([.. given.ShowWorkings().Steps, .. head.Under("rate").Steps]);
        double one = this.ShowLayer(zinc, rate, all);
        var tail = new StepList();
        double middle = this.LayersEverywhere * one;
        tail.Add(LossFormulas.Layers, [this.LayersEverywhere, one], middle);
        if (middle > 0)
        {
            double life = this.YearsReached(wanted);
            tail.Add(SpreadFormulas.Rest, [life / middle, middle], life);
        }

        all.AddRange(tail.Under("layers").Steps);
        return new Workings("Life that is reached with confidence " + confidence, new ValueList<WorkingStep>(all));
    }

    /// <inheritdoc/>
    public bool Equals(LifeDistribution? other) =>
        other is not null && this.Foil == other.Foil && this.LayersEverywhere == other.LayersEverywhere && this.Uncertainty == other.Uncertainty;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Foil, this.LayersEverywhere, this.Uncertainty);

    internal static double Confidence(Probability confidence) =>
        AcceptedRange.Between(1 - Surest, Surest, string.Empty).Check(confidence.Fraction, nameof(confidence));

    /// <summary>Time until a share of the zinc of all layers is used, with a confidence.</summary>
    internal double YearsToUse(double share, double confidence)
    {
        (int whole, double part) = this.Parts(share);
        return part == 0 ? 0 : this.spread.Years(confidence, whole, part);
    }

    /// <summary>Chance that a share of the zinc of all layers lasts so long.</summary>
    internal double ChanceToLast(double share, double years)
    {
        (int whole, double part) = this.Parts(share);
        return part == 0 ? 0 : this.spread.Reached(years, whole, part);
    }

    private double YearsReached(double confidence) => this.LayersEverywhere == 0
        ? 0
        : this.spread.Years(confidence, this.LayersEverywhere - 1, 1);

    // Whole layers used and the part of the next; a layer used up is a part of one.
    private (int Whole, double Part) Parts(double share)
    {
        double used = share * this.LayersEverywhere;
        int whole = (int)Math.Max(0, WithAllowance.Ceiling(used) - 1);
        double part = used - whole;
        return (whole, Math.Abs(part - 1) < 1e-9 ? 1 : part);
    }

    private double ShowLayer(double zinc, double rate, List<WorkingStep> all)
    {
        LossGrowth growth = this.Uncertainty.Growth;
        CorrosionRate stated = CorrosionRate.FromMicrometersPerYear(rate);
        if (growth.Exponent is { } exponent)
        {
            var steps = new StepList();
            double years;
            var terms = new PowerLawTerms(exponent.Mean.Value);
            if (growth.After == AfterTwentyYears.Tangent)
            {
                years = LossKernel.PowerYears(zinc, rate, terms, steps);
            }
            else
            {
                years = Math.Pow(zinc / rate, terms.Inverse);
                steps.Add(LossFormulas.PowerTime, [zinc, rate, exponent.Mean.Value], years);
            }

            all.AddRange([.. exponent.ShowWorkings().Steps, .. steps.Under("life").RestingOn(growth.Basis).Steps]);
            return years;
        }

        all.AddRange(growth.Law!.ShowTimeToLoss(stated, Length.FromMicrometers(zinc)).Steps);
        return growth.Law.TimeToLoss(stated, Length.FromMicrometers(zinc)).Years;
    }
}
