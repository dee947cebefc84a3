using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of what stays clear as the workings show them.</summary>
internal static class StayClearFormulas
{
    private static readonly Basis Figures = Basis.FirstPrinciples("plane figures on the surface rolled out flat, grown by the margin on every side");
    private static readonly Basis Lengths = Basis.FirstPrinciples("lengths along the pipe");

    private static readonly Symbol Margin = new("m", "margin on every side", TradeUnit.Millimeter);
    private static readonly Symbol Count = new("n", "how many of them", TradeUnit.One);
    private static readonly Symbol SpotArea = new("S", "Spots left clear, with their margins", TradeUnit.SquareMeter);
    private static readonly Symbol Bands = new("B", "bands left clear, with their margins", TradeUnit.Millimeter);
    private static readonly Symbol PipeLength = new("h", "length of the pipe", TradeUnit.Millimeter);

    internal static Formula RectangularSpots { get; } = new(
        "clear.spots-rectangular", SpotArea, "n * (a + 2 * m) * (b + 2 * m) / 1e6", @"\frac{n\,(a+2m)(b+2m)}{10^{6}}", Figures,
        [Count, new Symbol("a", "width", TradeUnit.Millimeter), Margin, new Symbol("b", "height", TradeUnit.Millimeter)]);

    internal static Formula RoundSpots { get; } = new(
        "clear.spots-round", SpotArea, "n * pi * pow(d + 2 * m, 2) / 4 / 1e6", @"\frac{n\,\pi\,(d+2m)^{2}}{4 \cdot 10^{6}}", Figures,
        [Count, new Symbol("d", "diameter", TradeUnit.Millimeter), Margin]);

    internal static Formula Band { get; } = new(
        "clear.bands", new Symbol("B_n", "Like bands left clear, with their margins", TradeUnit.Millimeter), "n * (b + 2 * m)", "n\\,(b+2m)", Lengths,
        [Count, new Symbol("b", "length of one", TradeUnit.Millimeter), Margin]);

    internal static Formula AllBands { get; } = new(
        "clear.all-bands", new Symbol("B", "All bands left clear so far, with their margins", TradeUnit.Millimeter), "B_0 + B_n", "B_0 + B_n", Lengths,
        [new Symbol("B_0", "bands counted before", TradeUnit.Millimeter), new Symbol("B_n", "like bands", TradeUnit.Millimeter)]);

    internal static Formula CoveredLength { get; } = new(
        "clear.covered-length", new Symbol("h_c", "Length of pipe that is covered", TradeUnit.Millimeter), "h - B", "h - B", Lengths, [PipeLength, Bands]);

    internal static Formula EqualSpan { get; } = new(
        "clear.equal-span", new Symbol("h_s", "Length of each span", TradeUnit.Millimeter), "(h - B) / (n_b + 1)", @"\frac{h-B}{n_b+1}", Lengths,
        [PipeLength, Bands, new Symbol("n_b", "bands between the spans", TradeUnit.One)]);

    internal static Formula Covered { get; } = new(
        "clear.covered-area", new Symbol("A_c", "Steel covered", TradeUnit.SquareMeter), "A - S", "A - S",
        Basis.FirstPrinciples("what stays clear is not covered"),
        [new Symbol("A", "area of the surface", TradeUnit.SquareMeter), new Symbol("S", "spots left clear, with their margins", TradeUnit.SquareMeter)]);

    internal static Formula SpotShare { get; } = new(
        "clear.spot-share", new Symbol("f", "Share of the surface that is cut out of the strips", TradeUnit.One), "S / A", @"\frac{S}{A}",
        Basis.FirstPrinciples("what lies over the spots is cut out; of laps their average share"),
        [new Symbol("S", "spots left clear, with their margins", TradeUnit.SquareMeter), new Symbol("A", "area of the surface", TradeUnit.SquareMeter)]);
}
