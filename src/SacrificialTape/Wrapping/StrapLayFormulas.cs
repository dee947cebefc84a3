using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of strips on straps as the workings show them.</summary>
internal static class StrapLayFormulas
{
    private static readonly Basis Folded = Basis.FirstPrinciples("the strips of the outer face are folded over both narrow edges of the strap");

    private static readonly Symbol StrapWidth = new("w_b", "width of the strap", TradeUnit.Millimeter);
    private static readonly Symbol Thickness = new("t", "thickness of the strap", TradeUnit.Millimeter);

    internal static Formula OuterSpan { get; } = new(
        "strap-lay.outer-span",
        new Symbol("W_o", "Width of the outer face and both narrow edges", TradeUnit.Millimeter),
        "w_b + 2 * t",
        @"w_\mathrm{b} + 2t",
        Folded,
        [StrapWidth, Thickness]);

    internal static Formula Pucker { get; } = new(
        "strap-lay.pucker",
        new Symbol("e_out", "Edge too long where it is folded down the narrow edge: pucker", TradeUnit.One),
        "t / (D / 2 + t)",
        @"\frac{t}{D/2 + t}",
        Basis.FirstPrinciples("the inner face has a circle shorter by 2 pi times the thickness than the outer one"),
        [Thickness, new Symbol("D", "outside diameter of the pipe", TradeUnit.Millimeter)]);

    internal static Formula TurnedIn { get; } = new(
        "strap-lay.turned-in",
        new Symbol("x", "What is left to turn in beyond each narrow edge", TradeUnit.Millimeter),
        "(w_s - W_o) / 2",
        @"\frac{w_\mathrm{s} - W_\mathrm{o}}{2}",
        Folded,
        [new Symbol("w_s", "strip width", TradeUnit.Millimeter), OuterSpan.Result]);
}
