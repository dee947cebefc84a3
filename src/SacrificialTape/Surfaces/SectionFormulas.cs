using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of sections as the workings show them.</summary>
internal static class SectionFormulas
{
    private static readonly Basis Outline = Basis.FirstPrinciples("straight faces of the outline, less what round corners save");

    private static readonly Symbol Height = new("h", "height of the section, outside", TradeUnit.Millimeter);
    private static readonly Symbol Width = new("b", "width of the section, outside", TradeUnit.Millimeter);
    private static readonly Symbol Web = new("t_w", "thickness of the web", TradeUnit.Millimeter);
    private static readonly Symbol Root = new("r", "root radius", TradeUnit.Millimeter);
    private static readonly Symbol RootOne = new("r_1", "root radius", TradeUnit.Millimeter);
    private static readonly Symbol Toe = new("r_2", "toe radius", TradeUnit.Millimeter);
    private static readonly Symbol Taper = new("delta", "taper of the inner faces of the flanges", TradeUnit.Degree);
    private static readonly Symbol Corner = new("r_o", "outside corner radius", TradeUnit.Millimeter);

    internal static Symbol Perimeter { get; } = new("U", "Perimeter of the section", TradeUnit.Millimeter);

    internal static Formula I { get; } = new(
        "section.i",
        Perimeter,
        "2 * h + 4 * b - 2 * t_w - (8 - 2 * pi) * r",
        @"2h + 4b - 2t_\mathrm{w} - (8 - 2\pi)\,r",
        Outline,
        [Height, Width, Web, Root]);

    internal static Formula CornerSaving { get; } = new(
        "section.corner-saving",
        new Symbol("k", "What a corner between an upright and a tapered face saves, per radius", TradeUnit.One),
        "2 * tan((90 - delta) * pi / 360) - (90 - delta) * pi / 180",
        @"2\tan\frac{\beta}{2} - \beta,\quad \beta = \frac{\pi}{2} - \delta",
        Outline,
        [Taper]);

    internal static Formula InnerFace { get; } = new(
        "section.inner-face",
        new Symbol("c", "Inner face of a flange, less the length by which its taper shortens toe and web", TradeUnit.Millimeter),
        "(b - t_w) * (1 / cos(delta * pi / 180) - tan(delta * pi / 180))",
        @"(b - t_\mathrm{w})\left(\frac{1}{\cos\delta} - \tan\delta\right)",
        Outline,
        [Width, Web, Taper]);

    internal static Formula Channel { get; } = new(
        "section.channel",
        Perimeter,
        "2 * h + 2 * b + 2 * c - 2 * k * (r_1 + r_2)",
        "2h + 2b + 2c - 2k\\,(r_1 + r_2)",
        Outline,
        [Height, Width, InnerFace.Result, CornerSaving.Result, RootOne, Toe]);

    internal static Formula Angle { get; } = new(
        "section.angle",
        Perimeter,
        "2 * (a + b) - (2 - pi / 2) * (r_1 + 2 * r_2)",
        @"2(a + b) - \left(2 - \frac{\pi}{2}\right)(r_1 + 2 r_2)",
        Outline,
        [
            new Symbol("a", "long leg, outside", TradeUnit.Millimeter),
            new Symbol("b", "short leg, outside", TradeUnit.Millimeter),
            RootOne,
            Toe,
        ]);

    internal static Formula Tee { get; } = new(
        "section.tee",
        Perimeter,
        "2 * h + 2 * b - (4 - pi) * r",
        @"2h + 2b - (4 - \pi)\,r",
        Outline,
        [Height, Width, Root]);

    internal static Formula RectangularHollow { get; } = new(
        "section.rectangular-hollow",
        Perimeter,
        "2 * (h + b) - (8 - 2 * pi) * r_o",
        @"2(h + b) - (8 - 2\pi)\,r_\mathrm{o}",
        Outline,
        [Height, Width, Corner]);

    internal static Formula CircularHollow { get; } = new(
        "section.circular-hollow",
        Perimeter,
        "pi * D",
        @"\pi D",
        Outline,
        [new Symbol("D", "outside diameter", TradeUnit.Millimeter)]);

    internal static Formula HotCorner { get; } = CornerBy("section.hot-corner", SectionSources.HotCorners);

    internal static Formula ColdCorner { get; } = CornerBy("section.cold-corner", SectionSources.ColdCorners);

    internal static Formula Area { get; } = new(
        "section.area",
        new Symbol("A", "Area of the section's faces along its length", TradeUnit.SquareMeter),
        "U * l / 1e6",
        @"\frac{U\,l}{10^{6}}",
        Outline,
        [Perimeter, new Symbol("l", "length along the section", TradeUnit.Millimeter)]);

    internal static Formula Face { get; } = new(
        "section.face",
        new Symbol("f_face", "Flat face between two folds", TradeUnit.Millimeter),
        "g - r_a * tan(beta_a * pi / 360) - r_b * tan(beta_b * pi / 360)",
        @"g - r_\mathrm{a}\tan\frac{\beta_\mathrm{a}}{2} - r_\mathrm{b}\tan\frac{\beta_\mathrm{b}}{2}",
        Outline,
        [
            new Symbol("g", "side of the outline, from sharp corner to sharp corner", TradeUnit.Millimeter),
            new Symbol("r_a", "radius of the fold before it", TradeUnit.Millimeter),
            new Symbol("beta_a", "turn of the fold before it", TradeUnit.Degree),
            new Symbol("r_b", "radius of the fold after it", TradeUnit.Millimeter),
            new Symbol("beta_b", "turn of the fold after it", TradeUnit.Degree),
        ]);

    internal static Formula FoldRun { get; } = new(
        "section.fold-run",
        new Symbol("s_fold", "Run of the fold along the outline", TradeUnit.Millimeter),
        "r_b * beta_b * pi / 180",
        @"r_\mathrm{b}\,\beta_\mathrm{b}",
        Outline,
        [
            new Symbol("r_b", "radius of the fold", TradeUnit.Millimeter),
            new Symbol("beta_b", "by how much the outline turns", TradeUnit.Degree),
        ]);

    private static Formula CornerBy(string id, Basis rule) => new(
        id,
        new Symbol("r_o", "Outside corner radius by the standard's rule", TradeUnit.Millimeter),
        "k * T",
        "k T",
        rule,
        [
            new Symbol("k", "corner radius per thickness", TradeUnit.One),
            new Symbol("T", "wall thickness", TradeUnit.Millimeter),
        ]);
}
