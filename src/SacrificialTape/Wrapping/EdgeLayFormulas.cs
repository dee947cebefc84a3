using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of strips folded over edges as the workings show them.</summary>
internal static class EdgeLayFormulas
{
    private static readonly Basis Joint = Basis.FirstPrinciples(
        "sides meet at corners: round the thickness one strip goes on past the corner; a corner that opens leaves a square on each face");

    private static readonly Symbol EndLap = new("o", "lap at corners and ends", TradeUnit.Millimeter);

    internal static Formula ExtraReach { get; } = new(
        "edge-lay.extra-reach",
        new Symbol("x", "Reach on the back beyond the stated one", TradeUnit.Millimeter),
        "w_s - W",
        @"w_\mathrm{s} - W",
        Basis.FirstPrinciples("what a strip has left when it has gone round the edge"),
        [new Symbol("w_s", "strip width", TradeUnit.Millimeter), RimFormulas.Width.Result]);

    internal static Formula SideStrip { get; } = new(
        "edge-lay.side-strip",
        new Symbol("L_side", "Strip of a side that goes on past its corner", TradeUnit.Millimeter),
        "g + o",
        "g + o",
        Joint,
        [new Symbol("g", "length of the side", TradeUnit.Millimeter), EndLap]);

    internal static Formula TabTrim { get; } = new(
        "edge-lay.tab-trim",
        new Symbol("y", "Strip cut away beside the tab that goes round a corner", TradeUnit.Millimeter),
        "o * (w_s - t) / w_s",
        @"\frac{o\,(w_\mathrm{s} - t)}{w_\mathrm{s}}",
        Joint,
        [EndLap, new Symbol("w_s", "strip width", TradeUnit.Millimeter), new Symbol("t", "thickness of the sheet", TradeUnit.Millimeter)]);

    internal static Formula Patch { get; } = new(
        "edge-lay.patch",
        new Symbol("c", "Side of a patch in an inside corner", TradeUnit.Millimeter),
        "a_f + o",
        @"a_\mathrm{f} + o",
        Joint,
        [new Symbol("a_f", "reach on its face", TradeUnit.Millimeter), EndLap]);

    internal static Formula Stretch { get; } = new(
        "edge-lay.stretch",
        new Symbol("e_in", "Edge too short on the faces round an opening: stretch", TradeUnit.One),
        "2 * a_m / d",
        @"\frac{2 a_\mathrm{m}}{d}",
        Basis.FirstPrinciples("a circle as much larger in radius as the strip reaches is longer by 2 pi times that"),
        [
            new Symbol("a_m", "largest reach on a face, as laid", TradeUnit.Millimeter),
            new Symbol("d", "clear diameter", TradeUnit.Millimeter),
        ]);

    internal static Formula Layers { get; } = new(
        "edge-lay.layers",
        new Symbol("n_all", "Layers everywhere", TradeUnit.One),
        "k * min(1, floor((W + o) / (W + delta)))",
        @"k\,\min\left(1, \left\lfloor\frac{W+o}{W+\delta}\right\rfloor\right)",
        Basis.FirstPrinciples("a wander larger than the lap opens the joints"),
        [
            new Symbol("k", "passes", TradeUnit.One),
            RimFormulas.Width.Result,
            EndLap,
            new Symbol("delta", "hand wander", TradeUnit.Millimeter),
        ]);
}
