using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Costing;

/// <summary>What amounts at other times are worth now, and the other way round, at one rate and over one time.</summary>
/// <remarks>
/// <para>Time: more than 0 and at most 10 000 a, not necessarily whole years; or unlimited, at a rate above 0.
/// Compounded yearly; a series is paid at the end of each year.</para>
/// <para>The factors are doubles. Where one meets money it is taken to 15 significant digits and multiplied in decimal.
/// Nothing is rounded to what can be paid.</para>
/// </remarks>
public sealed record TimeValue : IHasWorkings
{
    internal const double MostYears = 10_000;

    /// <summary>Describes rate and time.</summary>
    /// <param name="rate">The discount rate.</param>
    /// <param name="time">More than 0 and at most 10 000 a, or unlimited at a rate above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TimeValue(DiscountRate rate, Lifetime time)
    {
        double perYear = rate.FractionPerYear;
        if (!time.IsUnlimited)
        {
            AcceptedRange.AboveUpTo(0, MostYears, "a").Check(time.Years, nameof(time));
        }
        else if (perYear <= 0)
        {
            throw AcceptedRange.Above(0, "per year (for a time without end)").Refuse(perYear, nameof(rate));
        }

        this.Rate = rate;
        this.Time = time;
    }

    /// <summary>The discount rate.</summary>
    public DiscountRate Rate { get; }

    /// <summary>The time.</summary>
    public Lifetime Time { get; }

    /// <summary>What one paid at the end of the time is worth now: (1 + i)^-n.</summary>
    public double SinglePaymentFactor => TimeValueKernel.SinglePayment(this.PerYear, this.Time.Years, default(NoSteps));

    /// <summary>What one a year, paid at the end of each, is worth now.</summary>
    public double SeriesFactor => TimeValueKernel.Series(this.PerYear, this.Time.Years, default(NoSteps));

    /// <summary>The yearly payment that one paid now comes to: the inverse of <see cref="SeriesFactor"/>.</summary>
    public double CapitalRecoveryFactor => TimeValueKernel.CapitalRecovery(this.PerYear, this.Time.Years, default(NoSteps));

    private double PerYear => this.Rate.FractionPerYear;

    /// <summary>What an amount paid at the end of the time is worth now.</summary>
    /// <param name="later">The amount.</param>
    public Money PresentWorth(Money later) => later.Times(this.SinglePaymentFactor);

    /// <summary>What a yearly amount, paid at the end of each year, is worth now.</summary>
    /// <param name="perYear">The amount paid each year.</param>
    public Money PresentWorthOfSeries(Money perYear) => perYear.Times(this.SeriesFactor);

    /// <summary>The equivalent annual cost: the yearly amount over the time that an amount now comes to.</summary>
    /// <param name="now">The amount now.</param>
    public Money EquivalentAnnualCost(Money now) => now.Times(this.CapitalRecoveryFactor);

    /// <summary>What it is worth now to buy once and again each time the time is over, without end.</summary>
    /// <param name="cost">What it costs each time.</param>
    /// <exception cref="InvalidOperationException">The rate is not above 0: the sum has no end.</exception>
    public Money PresentWorthOfReplacementForEver(Money cost) => this.PerYear > 0
        ? cost.Times(TimeValueKernel.RepeatedWithoutEnd(this.PerYear, this.Time.Years, default(NoSteps)))
        : throw new InvalidOperationException("Replacement for ever has no finite present worth unless the discount rate is above 0.");

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = TimeValueKernel.SinglePayment(this.PerYear, this.Time.Years, steps);
        _ = TimeValueKernel.Series(this.PerYear, this.Time.Years, steps);
        _ = TimeValueKernel.CapitalRecovery(this.PerYear, this.Time.Years, steps);
        if (this.PerYear > 0 && !this.Time.IsUnlimited)
        {
            _ = TimeValueKernel.RepeatedWithoutEnd(this.PerYear, this.Time.Years, steps);
        }

        return steps.Under($"Worth of money over {this.Time} at {this.Rate}");
    }

    /// <summary>Rate and time in a few words.</summary>
    public override string ToString() => $"{this.Rate} over {this.Time}";
}
