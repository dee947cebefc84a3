using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>What to expect over the years at a confidence: zinc left, first maintenance, days to look.</summary>
/// <remarks>Shares are of the usable zinc of all layers; the outermost goes first and the next begins anew.</remarks>
public sealed record LifePlan
{
    private readonly double wanted;

    /// <summary>Describes a plan.</summary>
    /// <param name="life">The life with its uncertainty.</param>
    /// <param name="confidence">How sure the plan is to be, from 0.000001 to 0.999999.</param>
    /// <exception cref="ArgumentOutOfRangeException">The confidence is outside its range.</exception>
    public LifePlan(LifeDistribution life, Probability confidence)
    {
        ArgumentNullException.ThrowIfNull(life);
        this.wanted = LifeDistribution.Confidence(confidence);
        this.Life = life;
        this.Confidence = confidence;
    }

    /// <summary>The life with its uncertainty.</summary>
    public LifeDistribution Life { get; }

    /// <summary>How sure the plan is.</summary>
    public Probability Confidence { get; }

    /// <summary>Time to first maintenance: until then at least a share of the zinc is left.</summary>
    /// <param name="left">The share; none left is the end of the life.</param>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.PartOfLayers))]
    public Lifetime Until(ZincShare left) => Lifetime.OfYears(this.Life.YearsToUse(1 - left.Fraction, this.wanted));

    /// <summary>The share of the zinc that is left at least after a time.</summary>
    /// <param name="time">Time since the tape was laid, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.PartOfLayers))]
    public ZincShare LeftAfter(Duration time)
    {
        double years = LossArguments.Years(time);
        if (years == 0)
        {
            return ZincShare.FromFraction(this.Life.LayersEverywhere == 0 ? 0 : 1);
        }

        double Surplus(double used) => this.Life.ChanceToLast(used, years) - this.wanted;
        return ZincShare.FromFraction(Surplus(1) <= 0 ? 0 : 1 - BracketedRoot.Find(Surplus, 0, 1, 1e-12));
    }

    /// <summary>The curve of zinc left, point by point.</summary>
    /// <param name="times">Times since the tape was laid, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time is negative.</exception>
    public ValueList<ZincLeftPoint> Curve(IEnumerable<Duration> times)
    {
        return new(times.Listed().Select(time => new ZincLeftPoint(UnitConversions.Years(time), this.LeftAfter(time))));
    }

    /// <summary>Days to look at the tape: the last whole day on which each share is left at least.</summary>
    /// <param name="laid">The day on which it was laid.</param>
    /// <param name="at">Shares at which to look, in any order; which they are is the team's judgement.</param>
    /// <exception cref="ArgumentOutOfRangeException">A day lies beyond the calendar.</exception>
    public ValueList<DateOnly> Inspections(DateOnly laid, IEnumerable<ZincShare> at)
    {
        double most = DateOnly.MaxValue.DayNumber - laid.DayNumber;
        return new(at.Listed()
            .Select(left => laid.AddDays((int)AcceptedRange.Between(0, most, "d").Noting("the calendar ends there")
                .Check(WithAllowance.Floor(this.Until(left).Years * UnitConversions.HoursPerYear / 24), nameof(at))))
            .Order());
    }

    /// <inheritdoc/>
    public bool Equals(LifePlan? other) => other is not null && this.Life == other.Life && this.Confidence == other.Confidence;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Life, this.Confidence);
}
