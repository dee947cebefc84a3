using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Costing;

/// <summary>What an option costs per square metre and year over a study period, if it lasts so long.</summary>
/// <remarks>
/// It is bought at the start and anew at the end of each life that ends before the study does, at the same price. What
/// is left of the last one at the end of the study is worth nothing unless a later cost of the option says so.
/// </remarks>
public sealed record OptionCost : IHasWorkings
{
    private readonly double studyYears;

    internal OptionCost(CostOption option, Lifetime life, double studyYears, DiscountRate rate)
    {
        this.Option = option;
        this.Life = life;
        this.Rate = rate;
        this.studyYears = studyYears;
        this.Purchases = (long)this.BoughtTimes(default(NoSteps));
        (this.PresentWorth, this.PerSquareMeterAndYear) = this.Solve(default(NoSteps));
    }

    /// <summary>The option.</summary>
    public CostOption Option { get; }

    /// <summary>How long it lasts here.</summary>
    public Lifetime Life { get; }

    /// <summary>The discount rate.</summary>
    public DiscountRate Rate { get; }

    /// <summary>How often it is bought within the study.</summary>
    public long Purchases { get; }

    /// <summary>Present worth of all that is paid within the study.</summary>
    public Money PresentWorth { get; }

    /// <summary>Equivalent annual cost of a square metre.</summary>
    public Money PerSquareMeterAndYear { get; }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under($"{this.Option.Name}, lasting {this.Life}: cost of a square metre and year in {this.Option.FirstCost.Currency}");
    }

    /// <summary>Why it costs so much, in a few words.</summary>
    public override string ToString() => $"lasting {this.Life}, bought {this.Purchases} time(s) in {MeasureText.Write(this.studyYears, TradeUnit.Year, 6)}, present worth {this.PresentWorth.Rounded(4)}, {this.PerSquareMeterAndYear.Rounded(4)} per m2 and year";

    private double BoughtTimes<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        this.Life.IsUnlimited ? 1 : CostKernel.Purchases(this.studyYears, this.Life.Years, steps);

    private (Money PresentWorth, Money PerSquareMeterAndYear) Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = this.Rate.FractionPerYear;
        double times = this.BoughtTimes(steps);
        double? repeated = times == 1 ? null : TimeValueKernel.Repeated(rate, times, this.Life.Years, steps);
        Money worth = this.Option.FirstCost.Times(repeated ?? 1);
        CostKernel.NoteBought(this.Option.FirstCost, repeated, worth, steps);
        foreach (ICostItem item in this.Option.Later)
        {
            worth += this.Later(item, worth, steps);
        }

        double recovery = TimeValueKernel.CapitalRecovery(rate, this.studyYears, steps);
        Money each = worth.Times(recovery).Divide((decimal)this.Option.SquareMeters);
        CostKernel.NoteAnnual(worth, recovery, this.Option.SquareMeters, each, steps);
        return (worth, each);
    }

    // A single later cost is one payment; a recurring one as many as fall within the study.
    private Money Later<TSteps>(ICostItem item, Money before, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = this.Rate.FractionPerYear;
        CostTiming timing = item.Timing;
        double times = timing.Recurs
            ? CostKernel.Payments(timing, this.studyYears, steps)
            : timing.Counts(this.studyYears) ? 1 : 0;
        if (times == 0)
        {
            return item.Amount.Multiply(0);
        }

        double first = TimeValueKernel.SinglePayment(rate, timing.Years, steps);
        double? repeated = times == 1 ? null : TimeValueKernel.Repeated(rate, times, timing.Years, steps);
        Money worth = item.Amount.Times(first).Times(repeated ?? 1);
        CostKernel.NoteLater(item.Amount, first, repeated, worth, before, steps);
        return worth;
    }
}
