using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of strips along a section as the workings show them.</summary>
internal static class SectionLayFormulas
{
    private static readonly Basis Chain = Basis.FirstPrinciples(
        "strips placed one after the other on the unrolled outline, each as far on as its width, its lap and the folds let it");

    private static readonly Symbol Count = new("n", "strips side by side", TradeUnit.One);
    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Perimeter = new("U", "perimeter of the section", TradeUnit.Millimeter);
    private static readonly Symbol Passes = new("k_p", "passes", TradeUnit.One);

    internal static Formula LeastCount { get; } = new(
        "section-lay.least-count",
        new Symbol("n_0", "Strips that would do were there no folds", TradeUnit.One),
        "ceil(U / (w - o))",
        @"\left\lceil\frac{U}{w-o}\right\rceil",
        Chain,
        [Perimeter, Width, new Symbol("o", "least lap", TradeUnit.Millimeter)]);

    internal static Formula End { get; } = new(
        "section-lay.end",
        new Symbol("b_i", "Far edge of a strip, along the outline", TradeUnit.Millimeter),
        "a_i + w - x_i",
        "a_i + w - x_i",
        Chain,
        [
            new Symbol("a_i", "its first edge", TradeUnit.Millimeter),
            Width,
            new Symbol("x_i", "trimmed off its width", TradeUnit.Millimeter),
        ]);

    internal static Formula Lap { get; } = new(
        "section-lay.lap",
        new Symbol("o_i", "Lap of a strip on the next", TradeUnit.Millimeter),
        "b_i - a_n",
        "b_i - a_{i+1}",
        Chain,
        [End.Result, new Symbol("a_n", "first edge of the next strip", TradeUnit.Millimeter)]);

    internal static Formula OnAverage { get; } = new(
        "section-lay.on-average",
        new Symbol("n_mean", "Layers on average", TradeUnit.One),
        "k_p * (n * w - X) / U",
        @"\frac{k_\mathrm{p}\,(n\,w - X)}{U}",
        Chain,
        [Passes, Count, Width, new Symbol("X", "trimmed off all widths", TradeUnit.Millimeter), Perimeter]);

    internal static Formula Layers { get; } = new(
        "section-lay.layers",
        new Symbol("n_all", "Layers everywhere", TradeUnit.One),
        "k_p * m",
        "k_\\mathrm{p}\\,m",
        Chain,
        [Passes, new Symbol("m", "strips over the barest spot of one pass, every lap narrower by the wander", TradeUnit.One)]);
}
