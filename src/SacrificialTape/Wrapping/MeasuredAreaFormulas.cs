using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of tape by a measured area as the workings show them.</summary>
internal static class MeasuredAreaFormulas
{
    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Lap = new("o", "lap", TradeUnit.Millimeter);

    internal static Formula LapShare { get; } = new(
        "measured-area.lap-share",
        new Symbol("x_o", "Share of the strip's width that laps", TradeUnit.One),
        "o / w",
        @"\frac{o}{w}",
        Basis.FirstPrinciples("of each strip one lap lies on its neighbour"),
        [Lap, Width]);

    internal static Formula StripLength { get; } = new(
        "measured-area.strip-length",
        new Symbol("L", "Strip of one layer", TradeUnit.Millimeter),
        "A * 1e6 / (w * (1 - x_o))",
        @"\frac{A \cdot 10^{6}}{w\,(1 - x_\mathrm{o})}",
        Basis.Judgement("area over the width that a strip adds; ends, edges and cut-outs must be in the allowance of the area"),
        [new Symbol("A", "area with its allowance", TradeUnit.SquareMeter), Width, LapShare.Result]);

    internal static Formula Layers { get; } = new(
        "measured-area.layers",
        new Symbol("n_all", "Layers, as long as the laps are kept", TradeUnit.One),
        "k * min(1, floor(w / (w - o + delta)))",
        @"k\,\min\left(1, \left\lfloor\frac{w}{w-o+\delta}\right\rfloor\right)",
        Basis.Judgement("as on an open span, but no strip has a place, so nothing is proved"),
        [
            new Symbol("k", "layers wanted", TradeUnit.One),
            Width,
            Lap,
            new Symbol("delta", "hand wander", TradeUnit.Millimeter),
        ]);
}
