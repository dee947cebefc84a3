using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of sheet edges and rims as the workings show them.</summary>
internal static class RimFormulas
{
    private static readonly Basis Bands = Basis.FirstPrinciples("a folded strip unrolls flat; corners by squares, circles by rings");

    private static readonly Symbol Front = new("a", "reach on the front", TradeUnit.Millimeter);
    private static readonly Symbol Back = new("b", "reach on the back", TradeUnit.Millimeter);
    private static readonly Symbol Wide = new("w", "clear width", TradeUnit.Millimeter);
    private static readonly Symbol StripWidth = new("W", "Width round the edge", TradeUnit.Millimeter);
    private static readonly Symbol Rim = new("L_rim", "Length of the rim", TradeUnit.Millimeter);

    internal static Formula Width { get; } = new(
        "rim.width",
        StripWidth,
        "a + b + t",
        "a + b + t",
        Bands,
        [Front, Back, new Symbol("t", "thickness of the sheet", TradeUnit.Millimeter)]);

    internal static Formula EdgeArea { get; } = new(
        "rim.edge-area",
        new Symbol("A", "Area of the edge with its bands", TradeUnit.SquareMeter),
        "(L * W + n * (a * a + b * b)) / 1e6",
        @"\frac{L W + n\left(a^2 + b^2\right)}{10^{6}}",
        Bands,
        [
            new Symbol("L", "length along the edge", TradeUnit.Millimeter),
            StripWidth,
            new Symbol("n", "inside corners less outside corners", TradeUnit.One),
            Front,
            Back,
        ]);

    internal static Formula RectangularRim { get; } = new(
        "rim.rectangular",
        Rim,
        "2 * (w + h)",
        "2(w + h)",
        Bands,
        [Wide, new Symbol("h", "clear height", TradeUnit.Millimeter)]);

    internal static Formula RoundRim { get; } = new(
        "rim.round",
        Rim,
        "pi * d",
        @"\pi d",
        Bands,
        [new Symbol("d", "clear diameter", TradeUnit.Millimeter)]);

    internal static Formula RectangularOpening { get; } = new(
        "rim.rectangular-opening",
        new Symbol("A", "Area of the rim with its bands", TradeUnit.SquareMeter),
        "(L_rim * W + 4 * (a * a + b * b)) / 1e6",
        @"\frac{L_\mathrm{rim} W + 4\left(a^2 + b^2\right)}{10^{6}}",
        Bands,
        [Rim, StripWidth, Front, Back]);

    internal static Formula RoundOpening { get; } = new(
        "rim.round-opening",
        new Symbol("A", "Area of the rim with its bands", TradeUnit.SquareMeter),
        "(L_rim * W + pi * (a * a + b * b)) / 1e6",
        @"\frac{L_\mathrm{rim} W + \pi\left(a^2 + b^2\right)}{10^{6}}",
        Bands,
        [Rim, StripWidth, Front, Back]);
}
