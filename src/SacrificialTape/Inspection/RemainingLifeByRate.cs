using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>Remaining life at a constant rate, from the thickness supplied, now, and at the inspection before.</summary>
/// <remarks>
/// <para>Supplied: more than zero. Required: zero or more, less than supplied. The inspection before: earlier than now. A
/// thickness more than 1.5 times that supplied is refused.</para>
/// <para>Texts disagree on the rate: some take the larger of the two always, the piping code is recalled to leave it to the
/// inspector. The larger is the default; either may be chosen. The smaller is not offered as a choice of its own.</para>
/// <para>At a rate of zero or less the life is undetermined: never endless.</para>
/// </remarks>
public sealed record RemainingLifeByRate : IHasWorkings
{
    private readonly StoredNumber suppliedUm;
    private readonly StoredNumber requiredUm;
    private readonly StoredNumber rateUm;
    private readonly StoredNumber remaining;

    /// <summary>Works out the remaining life.</summary>
    /// <param name="supplied">Thickness supplied.</param>
    /// <param name="now">Age and thickness now.</param>
    /// <param name="required">Thickness below which the foil counts as used up.</param>
    /// <param name="before">Age and thickness at the inspection before, if there was one.</param>
    /// <param name="choice">Which rate to count with.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The short-term rate is chosen without an inspection before.</exception>
    public RemainingLifeByRate(Length supplied, ThicknessPoint now, Length required, ThicknessPoint? before = null, RateChoice choice = RateChoice.Larger)
    {
        ArgumentNullException.ThrowIfNull(now);
        double thick = AcceptedRange.Above(0, "um").Check(UnitConversions.Micrometers(supplied), nameof(supplied));
        double wanted = AcceptedRange.FromBelow(0, thick, "um").Check(UnitConversions.Micrometers(required), nameof(required));
        AcceptedRange.AboveUpTo(0, FoilReadings.RefusedAbove * thick, "um")
            .Noting("far thicker than the foil supplied: is adhesive left on, or were layers miscounted?").Check(now.Um, nameof(now));
        if (!Enum.IsDefined(choice))
        {
            throw new ArgumentOutOfRangeException(nameof(choice), choice, "Larger, LongTerm or ShortTerm.");
        }

        if (before is not null)
        {
            AcceptedRange.Inside(0, now.Years, "a").Noting("earlier than now").Check(before.Years, nameof(before));
        }
        else if (choice == RateChoice.ShortTerm)
        {
            throw new ArgumentException("There is no short-term rate without an inspection before.", nameof(choice));
        }

        this.suppliedUm = new StoredNumber(thick);
        this.requiredUm = new StoredNumber(wanted);
        this.Now = now;
        this.Before = before;
        this.Choice = choice;
        (double rate, double years) = this.Solve(default(NoSteps));
        this.rateUm = new StoredNumber(rate);
        this.IsDetermined = !double.IsNaN(years);
        this.remaining = new StoredNumber(this.IsDetermined ? years : 0);
    }

    /// <summary>Thickness supplied.</summary>
    public Length Supplied => Length.FromMicrometers(this.suppliedUm.Bare);

    /// <summary>Age and thickness now.</summary>
    public ThicknessPoint Now { get; }

    /// <summary>Thickness required.</summary>
    public Length Required => Length.FromMicrometers(this.requiredUm.Bare);

    /// <summary>Age and thickness at the inspection before.</summary>
    public ThicknessPoint? Before { get; }

    /// <summary>Which rate is counted with.</summary>
    public RateChoice Choice { get; }

    /// <summary>Mean rate since the tape was laid; null when it grew thicker.</summary>
    public CorrosionRate? LongTermRate => AsRate(this.LongTermUm(default(NoSteps)));

    /// <summary>Mean rate since the inspection before; null without one, or when it grew thicker since.</summary>
    public CorrosionRate? ShortTermRate => this.Before is null ? null : AsRate(this.ShortTermUm(default(NoSteps)));

    /// <summary>The rate counted with; null when it is below zero.</summary>
    public CorrosionRate? Rate => AsRate(this.rateUm.Bare);

    /// <summary>Whether a life can be told. At a rate of zero or less it cannot, unless the foil is already used up.</summary>
    public bool IsDetermined { get; }

    /// <summary>The remaining life; null when it is undetermined.</summary>
    public Duration? Remaining => this.IsDetermined ? UnitConversions.FromYears(this.remaining.Bare) : null;

    /// <summary>What must be said of the life.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (!this.IsDetermined)
        {
            yield return rules[RuleIds.LifeUndetermined].State(subject);
        }
        else if (this.remaining.Bare == 0)
        {
            yield return rules[RuleIds.FoilUsedUp].State(
                subject, new Measure(this.Now.Um, TradeUnit.Micrometer), new Measure(this.requiredUm.Bare, TradeUnit.Micrometer));
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Remaining life at a constant rate");
    }

    /// <summary>Rate and life in a few words.</summary>
    public override string ToString() => this.IsDetermined
        ? string.Create(CultureInfo.InvariantCulture, $"{this.remaining.Bare:0.##} a left at {this.rateUm.Bare:0.####} um/a")
        : string.Create(CultureInfo.InvariantCulture, $"life undetermined: the readings show no loss ({this.rateUm.Bare:0.####} um/a)");

    private static CorrosionRate? AsRate(double um) => um < 0 ? null : CorrosionRate.FromMicrometersPerYear(um);

    private double LongTermUm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => RemainingLifeKernel.LongTermUm(this.suppliedUm.Bare, this.Now.Um, this.Now.Years, steps);

    private double ShortTermUm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => RemainingLifeKernel.ShortTermUm(this.Before!.Um, this.Now.Um, this.Now.Years - this.Before.Years, steps);

    private (double Rate, double Years) Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = this.LongTermUm(steps);
        if (this.Before is not null)
        {
            double lately = this.ShortTermUm(steps);
            rate = this.Choice switch
            {
                RateChoice.Larger => Math.Max(rate, lately),
                RateChoice.ShortTerm => lately,
                _ => rate,
            };
        }

        return (rate, RemainingLifeKernel.ByRate(this.Now.Um, this.requiredUm.Bare, rate, steps));
    }
}
