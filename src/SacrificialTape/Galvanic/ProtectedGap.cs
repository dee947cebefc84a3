using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>The widest gap of bare steel between two like tapes that stays protected to its middle by a criterion.</summary>
/// <remarks>
/// Of linear metals by the closed form, of others by the numerical solution; the width is the bracketed root at which the
/// middle is at the potential wanted. A wider gap is never better protected, so there is one. A tape on one side only
/// protects half of it.
/// </remarks>
public sealed record ProtectedGap : IHasWorkings
{
    private const double NarrowestMm = 0.001;
    private const double WidestMm = 50_000;

    private readonly StoredNumber zincMm;
    private readonly StoredNumber halfMm;
    private readonly StoredNumber edgeV;

    /// <summary>Finds the widest gap.</summary>
    /// <param name="film">The film.</param>
    /// <param name="zinc">The zinc.</param>
    /// <param name="zincWidth">Half the width of each strip, or less where it feeds something else too.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="criterion">When it counts as protected.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArithmeticException">The potentials did not settle, or the gap is wider than 100 m.</exception>
    public ProtectedGap(ThinFilm film, Electrode zinc, Length zincWidth, Electrode steel, ProtectionCriterion criterion)
        : this(film, zinc, FilmSegment.AcceptedWidth.Check(UnitConversions.Millimeters(zincWidth), nameof(zincWidth)), steel, criterion)
    {
    }

    private ProtectedGap(ThinFilm film, Electrode zinc, double zincMm, Electrode steel, ProtectionCriterion criterion)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentNullException.ThrowIfNull(zinc);
        ArgumentNullException.ThrowIfNull(steel);
        ArgumentNullException.ThrowIfNull(criterion);
        this.Film = film;
        this.Zinc = zinc;
        this.zincMm = new StoredNumber(zincMm);
        this.Steel = steel;
        this.Criterion = criterion;
        double rest = (steel.RestPotential ?? throw new ArgumentException("Inert surface needs no protection.", nameof(steel))).VoltsCalomel;
        double wanted = criterion.ThresholdCalomel(rest);
        if (rest <= wanted)
        {
            this.Extent = GapExtent.Unlimited;
            return;
        }

        if (this.FarEnd(NarrowestMm) > wanted)
        {
            this.Extent = GapExtent.None;
            return;
        }

        double low = NarrowestMm;
        double high = 1;
        while (this.FarEnd(high) <= wanted)
        {
            low = high;
            high *= 4;
            if (high > WidestMm)
            {
                throw new ArithmeticException("The gap is wider than 100 m: a thin film does not reach so far.");
            }
        }

        double half = Math.Exp(BracketedRoot.Find(log => this.FarEnd(Math.Exp(log)) - wanted, Math.Log(low), Math.Log(high), 1e-11));
        this.halfMm = new StoredNumber(half);
        this.edgeV = new StoredNumber(this.EdgeAt(half));
    }

    /// <summary>The film.</summary>
    public ThinFilm Film { get; }

    /// <summary>The zinc.</summary>
    public Electrode Zinc { get; }

    /// <summary>Half the width of each strip.</summary>
    public Length ZincWidth => Length.FromMillimeters(this.ZincMm);

    /// <summary>The steel.</summary>
    public Electrode Steel { get; }

    /// <summary>When it counts as protected.</summary>
    public ProtectionCriterion Criterion { get; }

    /// <summary>Whether there is a widest gap.</summary>
    public GapExtent Extent { get; }

    /// <summary>The widest gap between two tapes.</summary>
    /// <exception cref="InvalidOperationException">There is none: ask <see cref="Extent"/> first.</exception>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.FullGap))]
    public Length Widest => Length.FromMillimeters(this.WidestMillimeters);

    internal double WidestMillimeters => ReachKernel.FullGap(this.Half, default(NoSteps));

    private double ZincMm => this.zincMm.Bare;

    private double Half => this.Extent == GapExtent.Limited ? this.halfMm.Bare : throw new InvalidOperationException(
        $"There is no widest gap (extent: {this.Extent}). Ask Extent first.");

    /// <summary>How the widest gap follows film and conductivity.</summary>
    /// <exception cref="InvalidOperationException">There is no widest gap: ask <see cref="Extent"/> first.</exception>
    public GapSensitivity Sensitivity()
    {
        _ = this.Half;
        const double Step = 1e-3;
        double Gap(double thickness, double conductivity) =>
            new ProtectedGap(this.Film.Scaled(thickness, conductivity), this.Zinc, this.ZincMm, this.Steel, this.Criterion).WidestMillimeters;
        return new(this, Gap(1 - Step, 1), Gap(1 + Step, 1), Gap(1, 1 - Step), Gap(1, 1 + Step), Step);
    }

    /// <summary>Holds a gap of bare steel between two tapes against the widest, and criterion and film against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="bareGap">The gap between the two tapes.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gap is not positive.</exception>
    public IEnumerable<Finding> Judge(Length bareGap, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        double gap = AcceptedRange.Above(0, "mm").Check(UnitConversions.Millimeters(bareGap), nameof(bareGap));
        return this.Found(rules, gap, subject);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        if (this.Extent == GapExtent.Limited)
        {
            if (this.LinearAt(this.halfMm.Bare) is { } input)
            {
                _ = ReachKernel.Couple(input, steps);
            }

            _ = ReachKernel.FullGap(this.halfMm.Bare, steps);
        }

        return steps.Under($"Widest gap protected by the criterion '{this.Criterion.Name}'");
    }

    /// <summary>The gap in a few words.</summary>
    public override string ToString() => this.Extent == GapExtent.Limited
        ? MeasureText.Write(this.WidestMillimeters, TradeUnit.Millimeter, 4)
        : this.Extent == GapExtent.None ? "none" : "unlimited";

    private IEnumerable<Finding> Found(RuleSet rules, double gap, string subject)
    {
        if (this.Extent == GapExtent.None || (this.Extent == GapExtent.Limited && WithAllowance.Above(gap, this.WidestMillimeters)))
        {
            yield return rules[RuleIds.GapNotProtected].State(
                subject,
                new Measure(gap, TradeUnit.Millimeter),
                new Measure(this.Extent == GapExtent.None ? 0 : this.WidestMillimeters, TradeUnit.Millimeter));
        }

        if (this.Criterion.IsForImmersion)
        {
            yield return rules[RuleIds.ImmersionCriterionUnderFilm].State(subject);
        }

        if (rules[RuleIds.FilmNotThin].Judge(new Measure(this.Film.Um / (1000 * gap), TradeUnit.One), subject) is { } thick)
        {
            yield return thick;
        }

        if (this.Criterion.NotBelow is { } lowest && this.Extent == GapExtent.Limited && this.edgeV.Bare < lowest.VoltsCalomel)
        {
            yield return rules[RuleIds.PotentialTooLow].State(
                subject, new Measure(this.edgeV.Bare, TradeUnit.Volt), new Measure(lowest.VoltsCalomel, TradeUnit.Volt));
        }
    }

    private double FarEnd(double halfMm) =>
        this.LinearAt(halfMm) is { } input ? ReachKernel.Couple(input, default(NoSteps)).FarEndV : this.SolveAt(halfMm).Potential[^1];

    private double EdgeAt(double halfMm) => this.LinearAt(halfMm) is { } input
        ? ReachKernel.Couple(input, default(NoSteps)).SteelEdgeV
        : this.SolveAt(halfMm).Potential[ThinFilmSolver.Coarsest];

    private LinearCoupleInput? LinearAt(double halfMm) => this.Zinc is LinearElectrode zinc && this.Steel is LinearElectrode steel
        ? new(
            this.Film.SiemensPerM, this.Film.Um, zinc.RestCalomel, zinc.OhmM2, this.ZincMm, steel.RestCalomel, steel.OhmM2, halfMm, 0, 0)
        : null;

    private ThinFilmAnswer SolveAt(double halfMm)
    {
        const double Error = 1e-9;
        ThinFilmAnswer answer = ThinFilmSolver.Solve(
            this.Film.Spread, [(this.Zinc.Under(this.Film), this.ZincMm), (this.Steel.Under(this.Film), halfMm)], Error);
        return answer.Error <= Error ? answer : throw new ArithmeticException("The potentials did not settle.");
    }
}
