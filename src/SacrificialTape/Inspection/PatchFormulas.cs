using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>The formulas of patches as the workings show them.</summary>
internal static class PatchFormulas
{
    private static readonly Basis Touching = Basis.FirstPrinciples("the ellipse of least area round the cut-out grown by the margin touches it where a cos = b sin");

    private static readonly Basis Areas = Basis.FirstPrinciples("areas of rectangle and ellipse");

    private static readonly Basis Rounding = Basis.FirstPrinciples("rounded up: a larger axis clears more");

    private static readonly Symbol Step = new("s", "step", TradeUnit.Millimeter);
    private static readonly Symbol Length = new("p", "half the length of the cut-out", TradeUnit.Millimeter);
    private static readonly Symbol Width = new("q", "half its width", TradeUnit.Millimeter);
    private static readonly Symbol Angle = new("phi", "direction in which they touch, found by bracketing", TradeUnit.Degree);
    private static readonly Symbol Reach = new("h", "reach of the cut-out in that direction", TradeUnit.Millimeter);
    private static readonly Symbol ReachFound = new("h", "Reach of the cut-out in the direction in which they touch", TradeUnit.Millimeter);
    private static readonly Symbol Margin = new("m", "margin", TradeUnit.Millimeter);

    internal static Formula RectangleReach { get; } = new(
        "patch.rectangle-reach", ReachFound, "p * cos(phi * pi / 180) + q * sin(phi * pi / 180)", @"p\cos\phi + q\sin\phi", Touching, [Length, Width, Angle]);

    internal static Formula EllipseReach { get; } = new(
        "patch.ellipse-reach", ReachFound, "sqrt(pow(p * cos(phi * pi / 180), 2) + pow(q * sin(phi * pi / 180), 2))",
        @"\sqrt{p^2\cos^2\phi + q^2\sin^2\phi}", Touching, [Length, Width, Angle]);

    internal static Formula HalfLength { get; } = new(
        "patch.half-length", new Symbol("a", "Half the length of the patch", TradeUnit.Millimeter), "(h + m) / (sqrt(2) * cos(phi * pi / 180))",
        @"\frac{h + m}{\sqrt{2}\cos\phi}", Touching, [Reach, Margin, Angle]);

    internal static Formula HalfWidth { get; } = new(
        "patch.half-width", new Symbol("b", "Half the width of the patch", TradeUnit.Millimeter), "(h + m) / (sqrt(2) * sin(phi * pi / 180))",
        @"\frac{h + m}{\sqrt{2}\sin\phi}", Touching, [Reach, Margin, Angle]);

    internal static Formula LengthAsCut { get; } = new(
        "patch.length-as-cut", new Symbol("L", "Length as it is cut", TradeUnit.Millimeter), "s * ceil(2 * a / s)", @"s\left\lceil\frac{2a}{s}\right\rceil", Rounding,
        [new Symbol("a", "half the length of the patch", TradeUnit.Millimeter), Step]);

    internal static Formula WidthAsCut { get; } = new(
        "patch.width-as-cut", new Symbol("W", "Width as it is cut", TradeUnit.Millimeter), "s * ceil(2 * b / s)", @"s\left\lceil\frac{2b}{s}\right\rceil", Rounding,
        [new Symbol("b", "half the width of the patch", TradeUnit.Millimeter), Step]);

    internal static Formula OvalArea { get; } = new(
        "patch.area", new Symbol("A", "Area of an oval", TradeUnit.SquareMeter), "pi / 4 * L * W / 1000000", @"\frac{\pi}{4}\,L\,W", Areas,
        [new Symbol("L", "length", TradeUnit.Millimeter), new Symbol("W", "width", TradeUnit.Millimeter)]);

    internal static Formula Pieces { get; } = new(
        "patch.pieces", new Symbol("n", "Pieces side by side", TradeUnit.One), "max(1, ceil((c - o) / (w - o)))",
        @"\max\left(1, \left\lceil\frac{c - o}{w - o}\right\rceil\right)",
        Basis.FirstPrinciples("open strips side by side over a span"),
        [new Symbol("c", "patch across the strips", TradeUnit.Millimeter), new Symbol("o", "lap", TradeUnit.Millimeter), new Symbol("w", "strip width", TradeUnit.Millimeter)]);

    internal static Formula Share { get; } = new(
        "patch.share", new Symbol("P", "Area patched of the area covered", TradeUnit.Percent), "100 * A_p / A", @"100\,\frac{A_p}{A}", Areas,
        [new Symbol("A_p", "area of the patches", TradeUnit.SquareMeter), new Symbol("A", "area covered", TradeUnit.SquareMeter)]);

    /// <summary>What repairs cost by the user's own norms.</summary>
    internal static Basis RepairCost { get; } = Basis.FirstPrinciples("once, and for each patch, and for each square metre of patch, at the user's own prices");

    /// <summary>The clear distance is found as a greatest value over all directions; it has no closed form.</summary>
    internal static Basis Clear { get; } = Basis.FirstPrinciples("reach of the patch less reach of the cut-out, least over all directions");
}
