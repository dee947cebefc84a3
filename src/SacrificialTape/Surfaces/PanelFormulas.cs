using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of panels as the workings show them.</summary>
internal static class PanelFormulas
{
    private static readonly Basis Plane = Basis.FirstPrinciples("plane figures; what is open is not covered");

    private static readonly Basis Profile = Basis.FirstPrinciples("a sheet folded along straight lines unrolls flat; sharp bends");

    private static readonly Symbol Count = new("n", "how many of them", TradeUnit.One);

    internal static Formula Rectangle { get; } = new(
        "panel.rectangle",
        new Symbol("A_gross", "Panel with its openings", TradeUnit.SquareMeter),
        "w * h / 1e6",
        @"\frac{w h}{10^{6}}",
        Plane,
        [
            new Symbol("w", "width of the panel", TradeUnit.Millimeter),
            new Symbol("h", "height of the panel", TradeUnit.Millimeter),
        ]);

    internal static Formula Disc { get; } = new(
        "panel.disc",
        new Symbol("A_gross", "Disc with its openings", TradeUnit.SquareMeter),
        "pi / 4 * D * D / 1e6",
        @"\frac{\pi D^2}{4 \cdot 10^{6}}",
        Plane,
        [new Symbol("D", "diameter of the disc", TradeUnit.Millimeter)]);

    internal static Formula Ring { get; } = new(
        "panel.ring",
        new Symbol("A_gross", "Ring with its openings", TradeUnit.SquareMeter),
        "pi / 4 * (D - D_i) * (D + D_i) / 1e6",
        @"\frac{\pi}{4 \cdot 10^{6}}\left(D^2 - D_\mathrm{i}^2\right)",
        Plane,
        [
            new Symbol("D", "outside diameter of the ring", TradeUnit.Millimeter),
            new Symbol("D_i", "diameter of its hole", TradeUnit.Millimeter),
        ]);

    internal static Formula RoundOpenings { get; } = new(
        "panel.round-openings",
        new Symbol("A_round", "Round openings of one kind", TradeUnit.SquareMeter),
        "n * pi / 4 * d * d / 1e6",
        @"\frac{n \pi d^2}{4 \cdot 10^{6}}",
        Plane,
        [Count, new Symbol("d", "diameter of an opening", TradeUnit.Millimeter)]);

    internal static Formula RectangularOpenings { get; } = new(
        "panel.rectangular-openings",
        new Symbol("A_rectangular", "Rectangular openings of one kind", TradeUnit.SquareMeter),
        "n * a * b / 1e6",
        @"\frac{n\,a\,b}{10^{6}}",
        Plane,
        [
            Count,
            new Symbol("a", "width of an opening", TradeUnit.Millimeter),
            new Symbol("b", "height of an opening", TradeUnit.Millimeter),
        ]);

    internal static Formula Area { get; } = new(
        "panel.area",
        new Symbol("A", "Area of the panel", TradeUnit.SquareMeter),
        "A_gross - A_openings",
        @"A_\mathrm{gross} - A_\mathrm{openings}",
        Plane,
        [
            new Symbol("A_gross", "panel with its openings", TradeUnit.SquareMeter),
            new Symbol("A_openings", "sum of the openings above", TradeUnit.SquareMeter),
        ]);

    internal static Formula Web { get; } = new(
        "panel.web",
        new Symbol("s", "Sloping web of a corrugation", TradeUnit.Millimeter),
        "sqrt(h * h + pow((p - c - v) / 2, 2))",
        @"\sqrt{h^2 + \left(\frac{p - c - v}{2}\right)^2}",
        Profile,
        [
            new Symbol("h", "depth of the corrugation", TradeUnit.Millimeter),
            new Symbol("p", "pitch, crown to crown", TradeUnit.Millimeter),
            new Symbol("c", "flat width of a crown", TradeUnit.Millimeter),
            new Symbol("v", "flat width of a valley", TradeUnit.Millimeter),
        ]);

    internal static Formula Developed { get; } = new(
        "panel.developed",
        new Symbol("u", "Developed width of one pitch", TradeUnit.Millimeter),
        "c + v + 2 * s",
        "c + v + 2 s",
        Profile,
        [
            new Symbol("c", "flat width of a crown", TradeUnit.Millimeter),
            new Symbol("v", "flat width of a valley", TradeUnit.Millimeter),
            Web.Result,
        ]);

    internal static Formula Corrugated { get; } = new(
        "panel.corrugated",
        new Symbol("A", "Area of the corrugated panel, one face", TradeUnit.SquareMeter),
        "(n * u + f) * l / 1e6",
        @"\frac{(n u + f)\,l}{10^{6}}",
        Profile,
        [
            new Symbol("n", "number of corrugations", TradeUnit.One),
            Developed.Result,
            new Symbol("f", "flat width beside the corrugations", TradeUnit.Millimeter),
            new Symbol("l", "length of the sheet along the corrugations", TradeUnit.Millimeter),
        ]);
}
