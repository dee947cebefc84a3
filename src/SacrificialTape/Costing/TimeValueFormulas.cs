using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>The formulas of compound interest as the workings show them.</summary>
internal static class TimeValueFormulas
{
    private static readonly Basis Factors = Basis.From(References.CompoundInterestFactors);
    private static readonly Basis Endless = Basis.From(References.CapitalizedCost);
    private static readonly Basis NoRate = Basis.FirstPrinciples("at a rate of zero an amount is worth the same in every year");

    private static readonly Symbol Rate = new("i", "discount rate per year", TradeUnit.One);
    private static readonly Symbol Years = new("n", "years", TradeUnit.Year);
    private static readonly Symbol OneSeries = new("a", "Present worth of one a year, paid at the end of each year", TradeUnit.One);
    private static readonly Symbol Recovery = new("c", "Yearly payment that one paid now comes to", TradeUnit.One);
    private static readonly Symbol Times = new("m", "times it is paid", TradeUnit.One);
    private static readonly Symbol Interval = new("L", "time from one to the next", TradeUnit.Year);
    private static readonly Symbol Cycle = new("k", "Present worth of one paid now and again at each interval", TradeUnit.One);

    internal static Formula SinglePayment { get; } = new(
        "time.single-payment", new Symbol("v", "Present worth of one paid later", TradeUnit.One),
        "pow(1 + i, -n)", "(1+i)^{-n}", Factors, [Rate, Years]);

    internal static Formula SeriesPresentWorth { get; } = new(
        "time.series", OneSeries, "(1 - pow(1 + i, -n)) / i", @"\frac{1-(1+i)^{-n}}{i}", Factors, [Rate, Years]);

    internal static Formula SeriesAtNoRate { get; } = new("time.series-no-rate", OneSeries, "n", "n", NoRate, [Years]);

    internal static Formula SeriesWithoutEnd { get; } = new(
        "time.series-without-end", OneSeries, "1 / i", @"\frac{1}{i}", Endless, [Rate]);

    internal static Formula CapitalRecovery { get; } = new(
        "time.capital-recovery", Recovery, "i / (1 - pow(1 + i, -n))", @"\frac{i}{1-(1+i)^{-n}}", Factors, [Rate, Years]);

    internal static Formula RecoveryAtNoRate { get; } = new("time.recovery-no-rate", Recovery, "1 / n", @"\frac{1}{n}", NoRate, [Years]);

    internal static Formula RecoveryWithoutEnd { get; } = new("time.recovery-without-end", Recovery, "i", "i", Endless, [Rate]);

    internal static Formula Repeated { get; } = new(
        "time.repeated", Cycle, "(1 - pow(1 + i, -m * L)) / (1 - pow(1 + i, -L))", @"\frac{1-(1+i)^{-mL}}{1-(1+i)^{-L}}",
        Basis.FirstPrinciples("sum of a geometric series of m terms: 1 + v + v^2 + ..., v = (1 + i)^-L"),
        [Rate, Times, Interval]);

    internal static Formula RepeatedAtNoRate { get; } = new("time.repeated-no-rate", Cycle, "m", "m", NoRate, [Times]);

    internal static Formula RepeatedWithoutEnd { get; } = new(
        "time.repeated-without-end", Cycle, "1 / (1 - pow(1 + i, -L))", @"\frac{1}{1-(1+i)^{-L}}",
        Basis.FirstPrinciples("sum of a geometric series without end: 1 + v + v^2 + ..., v = (1 + i)^-L"),
        [Rate, Interval]);
}
