using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>The sums of an estimate and of a comparison as the workings show them. Amounts are in the major unit of the currency.</summary>
internal static class CostFormulas
{
    private static readonly Basis Bill = Basis.FirstPrinciples("quantity times the user's own price");
    private static readonly Basis Adding = Basis.FirstPrinciples("a total is the sum of its lines");
    private static readonly Basis Worth = Basis.FirstPrinciples("each amount at its present worth");

    private static readonly Symbol Amount = new("C", "Cost of a line", TradeUnit.One);
    private static readonly Symbol Total = new("S", "Sum so far", TradeUnit.One);
    private static readonly Symbol Before = new("s", "sum before", TradeUnit.One);
    private static readonly Symbol Line = new("C", "cost of the line", TradeUnit.One);
    private static readonly Symbol Study = new("N", "study period", TradeUnit.Year);
    private static readonly Symbol Interval = new("L", "time from one to the next", TradeUnit.Year);
    private static readonly Symbol Paid = new("m", "Times it is paid", TradeUnit.One);
    private static readonly Symbol LaterWorth = new("w", "Present worth of a later cost", TradeUnit.One);
    private static readonly Symbol Each = new("a", "amount each time", TradeUnit.One);
    private static readonly Symbol Waited = new("v", "present worth of one paid later", TradeUnit.One);
    private static readonly Symbol First = new("P", "first cost", TradeUnit.One);
    private static readonly Symbol Repeated = new("k", "present worth of one paid now and again at each interval", TradeUnit.One);
    private static readonly Symbol AllWorth = new("W_all", "Present worth so far", TradeUnit.One);
    private static readonly Symbol Area = new("A", "area covered", TradeUnit.SquareMeter);

    internal static Formula Hours { get; } = new(
        "cost.hours", new Symbol("H", "Working time", TradeUnit.Hour), "q * h", @"q\,h", Basis.FirstPrinciples("work times the user's own norm"),
        [new Symbol("q", "work: m2, m of strip or pieces", TradeUnit.One), new Symbol("h", "time for one of it", TradeUnit.Hour)]);

    internal static Formula Item { get; } = new(
        "cost.line", Amount, "N * p", @"N\,p", Bill,
        [new Symbol("N", "quantity, in the unit of the price", TradeUnit.One), new Symbol("p", "price", TradeUnit.One)]);

    internal static Formula Sum { get; } = new("cost.sum", Total, "s + C", "s + C", Adding, [Before, Line]);

    internal static Formula PerArea { get; } = new(
        "cost.per-area", new Symbol("c_A", "Cost of a square metre", TradeUnit.One), "S / A", @"\frac{S}{A}", Adding,
        [new Symbol("S", "first cost", TradeUnit.One), Area]);

    internal static Formula Purchases { get; } = new(
        "cost.purchases", new Symbol("m", "Times it is bought", TradeUnit.One), "max(1, ceil(N / L))", @"\max\left(1, \left\lceil\frac{N}{L}\right\rceil\right)",
        Basis.FirstPrinciples("bought anew at the end of each life that ends before the study does"),
        [Study, Interval]);

    internal static Formula PaymentsToTheEnd { get; } = new(
        "cost.payments-to-the-end", Paid, "floor(N / L)", @"\left\lfloor\frac{N}{L}\right\rfloor",
        Basis.FirstPrinciples("paid at the end of each interval that is over within the study, the last day included"), [Study, Interval]);

    internal static Formula PaymentsBeforeTheEnd { get; } = new(
        "cost.payments-before-the-end", Paid, "ceil(N / L) - 1", @"\left\lceil\frac{N}{L}\right\rceil - 1",
        Basis.FirstPrinciples("paid at the end of each interval that is over before the study is"), [Study, Interval]);

    internal static Formula BoughtOnce { get; } = new("cost.bought-once", AllWorth, "P", "P", Worth, [First]);

    internal static Formula BoughtAgain { get; } = new("cost.bought-again", AllWorth, "P * k", @"P\,k", Worth, [First, Repeated]);

    internal static Formula LaterOnce { get; } = new("cost.later-once", LaterWorth, "a * v", @"a\,v", Worth, [Each, Waited]);

    internal static Formula LaterAgain { get; } = new(
        "cost.later-again", LaterWorth, "a * v * k", @"a\,v\,k", Worth,
        [Each, Waited, Repeated]);

    internal static Formula WithLater { get; } = new(
        "cost.present-worth", AllWorth, "s + w", "s + w", Worth,
        [new Symbol("s", "present worth before", TradeUnit.One), new Symbol("w", "present worth of a later cost", TradeUnit.One)]);

    internal static Formula AnnualPerArea { get; } = new(
        "cost.annual-per-area", new Symbol("E", "Equivalent annual cost of a square metre", TradeUnit.One), "W_all * c / A", @"\frac{W_\mathrm{all}\,c}{A}",
        Basis.From(References.CompoundInterestFactors, "present worth times capital recovery, over the area"),
        [
            new Symbol("W_all", "present worth of all costs", TradeUnit.One),
            new Symbol("c", "yearly payment that one paid now comes to", TradeUnit.One),
            Area,
        ]);
}
