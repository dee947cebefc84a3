using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.ServiceLife;

/// <summary>How long zinc and the paint over it last together: a range for each published factor, and never one number.</summary>
/// <remarks>
/// The factors are those of hot-dip zinc; for foil on adhesive none was found, and <see cref="Judge"/> says so. A required
/// life is held against the zinc alone: paint excuses no foil that is too thin.
/// </remarks>
public sealed record DuplexLife : IHasWorkings
{
    /// <summary>Estimates a range by each factor.</summary>
    /// <param name="zincEarliest">The earliest end of the zinc by itself.</param>
    /// <param name="zincLatest">The latest end of the zinc by itself.</param>
    /// <param name="paint">The paint by itself.</param>
    /// <param name="factors">At least one; left out: all that are published.</param>
    /// <exception cref="ArgumentOutOfRangeException">The latest end is before the earliest.</exception>
    /// <exception cref="ArgumentException">There is no factor.</exception>
    public DuplexLife(Lifetime zincEarliest, Lifetime zincLatest, PaintFilm paint, IEnumerable<DuplexFactor>? factors = null)
    {
        ArgumentNullException.ThrowIfNull(paint);
        if (zincLatest < zincEarliest)
        {
            throw new ArgumentOutOfRangeException(nameof(zincLatest), $"{zincLatest} is before the earliest end, {zincEarliest}.");
        }

        ValueList<DuplexFactor> all = factors?.Listed() ?? DuplexFactor.Published;
        if (all.Count == 0)
        {
            throw new ArgumentException("A duplex life needs at least one factor.", nameof(factors));
        }

        this.ZincEarliest = zincEarliest;
        this.ZincLatest = zincLatest;
        this.Paint = paint;
        this.ByFactor = new ValueList<DuplexRange>(all.Select(this.Under));
        this.Earliest = this.ByFactor.Min(static range => range.Earliest);
        this.Latest = this.ByFactor.Max(static range => range.Latest);
    }

    /// <summary>The earliest end of the zinc by itself.</summary>
    public Lifetime ZincEarliest { get; }

    /// <summary>The latest end of the zinc by itself.</summary>
    public Lifetime ZincLatest { get; }

    /// <summary>The paint by itself.</summary>
    public PaintFilm Paint { get; }

    /// <summary>The range by each factor.</summary>
    public ValueList<DuplexRange> ByFactor { get; }

    /// <summary>The earliest end by any factor.</summary>
    public Lifetime Earliest { get; }

    /// <summary>The latest end by any factor.</summary>
    public Lifetime Latest { get; }

    /// <summary>States what the range rests on.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        yield return rules[RuleIds.DuplexFactorOfHotDip].State(subject);
        if (this.Paint.AlkydNextToZinc)
        {
            yield return rules[RuleIds.AlkydOnZinc].State(subject);
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var all = new List<WorkingStep>();
        foreach (DuplexRange range in this.ByFactor)
        {
            var steps = new StepList();
            _ = DuplexKernel.Years(range.Factor.Lowest, this.ZincEarliest.Years, this.Paint.Earliest.Years, steps);
            _ = DuplexKernel.Years(range.Factor.Highest, this.ZincLatest.Years, this.Paint.Latest.Years, steps);
            all.AddRange(steps.Under("factor").Steps);
        }

        return new Workings("Zinc and paint together", new ValueList<WorkingStep>(all));
    }

    /// <summary>The widest range in a few words.</summary>
    public override string ToString() => $"{this.Earliest} to {this.Latest}";

    private DuplexRange Under(DuplexFactor factor) => new(
        factor,
        Lifetime.OfYears(DuplexKernel.Years(factor.Lowest, this.ZincEarliest.Years, this.Paint.Earliest.Years, default(NoSteps))),
        Lifetime.OfYears(DuplexKernel.Years(factor.Highest, this.ZincLatest.Years, this.Paint.Latest.Years, default(NoSteps))));
}
