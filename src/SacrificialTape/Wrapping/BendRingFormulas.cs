using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of rings on a bend as the workings show them.</summary>
internal static class BendRingFormulas
{
    private static readonly Basis Outside = Basis.FirstPrinciples(
        "the least lap is held on the outside of the bend, where rings stand farthest apart; the first and the last lap on the straight pipe by as much as on each other");

    private static readonly Symbol Span = new("W", "arc along the outside", TradeUnit.Millimeter);
    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Count = new("n", "Rings", TradeUnit.One);

    internal static Formula Rings { get; } = new(
        "bend-rings.count", Count, "ceil((W + o) / (w - o))", @"\left\lceil\frac{W+o}{w-o}\right\rceil",
        Outside, [Span, new Symbol("o", "least lap", TradeUnit.Millimeter), Width]);

    internal static Formula OutsideLap { get; } = new(
        "bend-rings.outside-lap",
        new Symbol("o_out", "Lap on the outside, equalised", TradeUnit.Millimeter),
        "(n * w - W) / (n + 1)",
        @"\frac{n\,w-W}{n+1}",
        Outside,
        [Count, Width, Span]);

    internal static Formula InsideLap { get; } = new(
        "bend-rings.inside-lap",
        new Symbol("o_in", "Lap on the inside", TradeUnit.Millimeter),
        "w - (w - o_out) * (R - r) / (R + r)",
        @"w - (w - o_\mathrm{out})\frac{R-r}{R+r}",
        Basis.FirstPrinciples("rings are set at equal angles, so their spacing goes with the distance from the centre of the bend"),
        [
            Width,
            new Symbol("o_out", "lap on the outside", TradeUnit.Millimeter),
            new Symbol("R", "bend radius", TradeUnit.Millimeter),
            new Symbol("r", "radius of the pipe", TradeUnit.Millimeter),
        ]);
}
