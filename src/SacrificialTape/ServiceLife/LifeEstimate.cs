using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>How long the zinc lasts in the open air, as a range: from the earliest to the latest end that is plausible.</summary>
/// <remarks>
/// <para>Zinc counted: usable share of the foil, times layers everywhere. Under each law the layers follow one another,
/// each beginning anew; under a power law that is the shorter and hence safer reading.</para>
/// <para>Earliest: least foil at the highest rate under the law that gives least (the linear one for all lives over a
/// year). Latest: nominal foil at the lowest rate under the law that gives most.</para>
/// <para>It is the life of the zinc by its own corrosion. Bare steel beside it draws on it too, and no published life of
/// foil on adhesive was found: <see cref="Judge"/> says so.</para>
/// </remarks>
/// <example><code source="ZincLifePage.cs" region="both-laws" /></example>
public sealed record LifeEstimate : IHasWorkings
{
    internal const int MostLayers = 100;

    private readonly StoredNumber leastUm;
    private readonly StoredNumber nominalUm;

    /// <summary>Estimates a life under the linear law and the power law with the mean exponent.</summary>
    /// <param name="foil">The foil.</param>
    /// <param name="layersEverywhere">The least number of layers over any spot, 0 to 100.</param>
    /// <param name="exposure">Where it stands.</param>
    /// <param name="usable">The share of the foil that may be used up.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of layers is outside its range.</exception>
    public LifeEstimate(Foil foil, int layersEverywhere, ZincExposure exposure, Utilisation usable)
        : this(foil, layersEverywhere, exposure, usable, [LinearLoss.Law, PowerLawLoss.ZincMean])
    {
    }

    /// <summary>Estimates a life under laws of the user's choice.</summary>
    /// <param name="foil">The foil.</param>
    /// <param name="layersEverywhere">The least number of layers over any spot, 0 to 100.</param>
    /// <param name="exposure">Where it stands.</param>
    /// <param name="usable">The share of the foil that may be used up.</param>
    /// <param name="laws">At least one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of layers is outside its range.</exception>
    /// <exception cref="ArgumentException">There is no law.</exception>
    public LifeEstimate(Foil foil, int layersEverywhere, ZincExposure exposure, Utilisation usable, IEnumerable<ILossLaw> laws)
    {
        ValueList<ILossLaw> allLaws = laws.Listed();
        ArgumentNullException.ThrowIfNull(foil);
        ArgumentNullException.ThrowIfNull(exposure);
        AcceptedRange.Between(0, MostLayers, "layers").Check(layersEverywhere);
        if (allLaws.Count == 0)
        {
            throw new ArgumentException("A life needs at least one loss law.", nameof(laws));
        }

        this.Foil = foil;
        this.LayersEverywhere = layersEverywhere;
        this.Exposure = exposure;
        this.Usable = usable;
        this.leastUm = new StoredNumber(usable.Fraction * foil.LeastThicknessMm * 1000);
        this.nominalUm = new StoredNumber(usable.Fraction * foil.ThicknessMm * 1000);
        this.ByLaw = new ValueList<LawLife>(allLaws.Select(this.Under));
        this.Earliest = this.ByLaw.Min(static life => life.Earliest);
        this.Latest = this.ByLaw.Max(static life => life.Latest);
    }

    /// <summary>The foil.</summary>
    public Foil Foil { get; }

    /// <summary>The least number of layers over any spot.</summary>
    public int LayersEverywhere { get; }

    /// <summary>Where it stands.</summary>
    public ZincExposure Exposure { get; }

    /// <summary>The share of the foil that may be used up.</summary>
    public Utilisation Usable { get; }

    /// <summary>Zinc counted on: usable share of the nominal foil, times layers everywhere.</summary>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.ZincPerLayer))]
    public Length ZincCounted => Length.FromMicrometers(this.nominalUm.Bare * this.LayersEverywhere);

    /// <summary>The life under each law.</summary>
    public ValueList<LawLife> ByLaw { get; }

    /// <summary>The earliest end that is plausible: the one to design for.</summary>
    public Lifetime Earliest { get; }

    /// <summary>The latest end that is plausible.</summary>
    public Lifetime Latest { get; }

    /// <summary>Holds the life against a requirement and the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="required">The life that is required.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(Lifetime required, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        Measure? limit = AsMeasure(required);
        if (Shorter(this.Latest, required))
        {
            yield return rules[RuleIds.LifeFallsShort].State(subject, AsMeasure(this.Latest), limit);
        }
        else if (Shorter(this.Earliest, required))
        {
            yield return rules[RuleIds.LifeMayFallShort].State(subject, AsMeasure(this.Earliest), limit);
        }

        foreach (Finding finding in this.Exposure.Judge(rules, subject))
        {
            yield return finding;
        }

        foreach (Finding finding in this.ByLaw.SelectMany(life => this.JudgeLaw(life.Law, rules, subject)))
        {
            yield return finding;
        }

        if (this.ByLaw.Any(static life => life.Law.Basis.Kind == BasisKind.Recalled))
        {
            yield return rules[RuleIds.RecalledLifeValue].State(subject);
        }

        yield return rules[RuleIds.NoPublishedLife].State(subject);
    }

    /// <summary>The workings of the earliest life: least foil at the highest rate, under each law.</summary>
    public Workings ShowWorkings() => this.Show(
        "Earliest", this.Foil.LeastThicknessMm * 1000, this.leastUm.Bare, this.Exposure.FirstYear.Highest, static life => life.Earliest);

    /// <summary>The workings of the latest life: nominal foil at the lowest rate, under each law.</summary>
    public Workings ShowLatestWorkings() => this.Show(
        "Latest", this.Foil.ThicknessMm * 1000, this.nominalUm.Bare, this.Exposure.FirstYear.Lowest, static life => life.Latest);

    /// <summary>The range in a few words.</summary>
    public override string ToString() => $"{this.Earliest} to {this.Latest}";

    private Workings Show(string which, double foilUm, double usableUm, CorrosionRate rate, Func<LawLife, Lifetime> end)
    {
        var steps = new StepList();
        steps.Add(LossFormulas.ZincPerLayer, [this.Usable.Fraction, foilUm], usableUm);
        var all = new List<WorkingStep>(steps.Under("zinc").Steps);
        foreach (LawLife life in this.ByLaw)
        {
            all.AddRange(life.Law.ShowTimeToLoss(rate, Length.FromMicrometers(usableUm)).Steps);
            Lifetime one = life.Law.TimeToLoss(rate, Length.FromMicrometers(usableUm));
            if (!one.IsUnlimited)
            {
                var layers = new StepList();
                layers.Add(LossFormulas.Layers, [this.LayersEverywhere, one.Years], end(life).Years);
                all.AddRange(layers.Under("layers").Steps);
            }
        }

        return new Workings(which + " life of the zinc in " + this.Exposure.Name, new ValueList<WorkingStep>(all));
    }

    private static bool Shorter(Lifetime life, Lifetime required) =>
        !life.IsUnlimited && (required.IsUnlimited || WithAllowance.Below(life.Years, required.Years));

    private static Measure? AsMeasure(Lifetime life) =>
        life.IsUnlimited ? null : new Measure(life.Years, TradeUnit.Year);

    private IEnumerable<Finding> JudgeLaw(ILossLaw law, RuleSet rules, string subject) => law is IJudgedLossLaw judged
        ? judged.Judge(law.TimeToLoss(this.Exposure.FirstYear.Lowest, Length.FromMicrometers(this.nominalUm.Bare)), rules, subject)
        : [];

    private LawLife Under(ILossLaw law) => new(
        law,
        this.AllLayers(law.TimeToLoss(this.Exposure.FirstYear.Highest, Length.FromMicrometers(this.leastUm.Bare))),
        this.AllLayers(law.TimeToLoss(this.Exposure.FirstYear.Lowest, Length.FromMicrometers(this.nominalUm.Bare))));

    private Lifetime AllLayers(Lifetime one) => this.LayersEverywhere == 0
        ? Lifetime.OfYears(0)
        : Lifetime.OfYears(this.LayersEverywhere * one.Years);
}
