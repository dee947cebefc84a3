using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of straps, columns, washers and measured areas as the workings show them.</summary>
internal static class SupportFormulas
{
    private static readonly Basis Bent = Basis.FirstPrinciples("a flat bar bent round a circle: each face is an arc of its own radius");

    private static readonly Basis Plates = Basis.FirstPrinciples("a right cone unrolls into a sector of a ring; plane figures less round holes");

    private static readonly Symbol Pipe = new("D", "outside diameter of the pipe", TradeUnit.Millimeter);
    private static readonly Symbol Wrap = new("phi", "how far the strap goes round", TradeUnit.Degree);
    private static readonly Symbol Ends = new("e", "both straight ends together", TradeUnit.Millimeter);
    private static readonly Symbol PlateWidth = new("w", "width of the plate", TradeUnit.Millimeter);
    private static readonly Symbol PlateDepth = new("d", "depth of the plate", TradeUnit.Millimeter);

    internal static Formula OuterFace { get; } = new(
        "support.outer-face",
        new Symbol("l_o", "Length of the outer face", TradeUnit.Millimeter),
        "(D / 2 + t) * phi * pi / 180 + e",
        @"\left(\frac{D}{2} + t\right)\varphi + e",
        Bent,
        [Pipe, new Symbol("t", "thickness of the strap", TradeUnit.Millimeter), Wrap, Ends]);

    internal static Formula InnerFace { get; } = new(
        "support.inner-face",
        new Symbol("l_i", "Length of the inner face", TradeUnit.Millimeter),
        "D / 2 * phi * pi / 180 + e",
        @"\frac{D}{2}\varphi + e",
        Bent,
        [Pipe, Wrap, Ends]);

    internal static Formula StrapArea { get; } = new(
        "support.strap-area",
        new Symbol("A", "Area of the strap's faces that are covered", TradeUnit.SquareMeter),
        "w * (l_o + l_i) / 1e6",
        @"\frac{w\,(l_\mathrm{o} + l_\mathrm{i})}{10^{6}}",
        Bent,
        [
            new Symbol("w", "width of the strap", TradeUnit.Millimeter),
            OuterFace.Result,
            new Symbol("l_i", "length of the inner face, 0 where it is left out", TradeUnit.Millimeter),
        ]);

    internal static Formula ColumnWall { get; } = new(
        "support.column-wall",
        new Symbol("A_wall", "Wall of the column", TradeUnit.SquareMeter),
        "pi * (D_1 + D_2) / 2 * s / 1e6",
        @"\frac{\pi\,(D_1 + D_2)\,s}{2 \cdot 10^{6}}",
        Plates,
        [
            new Symbol("D_1", "outside diameter at the foot", TradeUnit.Millimeter),
            new Symbol("D_2", "outside diameter at the top", TradeUnit.Millimeter),
            new Symbol("s", "slant of the wall", TradeUnit.Millimeter),
        ]);

    internal static Formula PlateTop { get; } = new(
        "support.plate-top",
        new Symbol("A_top", "Top of the base plate outside the foot, less its bolt holes", TradeUnit.SquareMeter),
        "(w * d - pi / 4 * (D_1 * D_1 + n * d_h * d_h)) / 1e6",
        @"\frac{1}{10^{6}}\left[w d - \frac{\pi}{4}\left(D_1^2 + n d_\mathrm{h}^2\right)\right]",
        Plates,
        [
            PlateWidth,
            PlateDepth,
            new Symbol("D_1", "outside diameter at the foot", TradeUnit.Millimeter),
            new Symbol("n", "number of bolt holes", TradeUnit.One),
            new Symbol("d_h", "diameter of a bolt hole", TradeUnit.Millimeter),
        ]);

    internal static Formula PlateSides { get; } = new(
        "support.plate-sides",
        new Symbol("A_sides", "Narrow sides of the base plate", TradeUnit.SquareMeter),
        "2 * (w + d) * t / 1e6",
        @"\frac{2\,(w + d)\,t}{10^{6}}",
        Plates,
        [PlateWidth, PlateDepth, new Symbol("t", "thickness of the plate", TradeUnit.Millimeter)]);

    internal static Formula ColumnArea { get; } = new(
        "support.column-area",
        new Symbol("A", "Area of the column and its plate", TradeUnit.SquareMeter),
        "A_wall + A_top + A_sides",
        @"A_\mathrm{wall} + A_\mathrm{top} + A_\mathrm{sides}",
        Plates,
        [
            ColumnWall.Result,
            new Symbol("A_top", "top of the base plate, 0 without one", TradeUnit.SquareMeter),
            new Symbol("A_sides", "narrow sides of the base plate, 0 without one", TradeUnit.SquareMeter),
        ]);

    internal static Formula Washers { get; } = new(
        "support.washers",
        new Symbol("A", "Area of the washers, one face each", TradeUnit.SquareMeter),
        "n * pi / 4 * (D - d) * (D + d) / 1e6",
        @"\frac{n \pi}{4 \cdot 10^{6}}\left(D^2 - d^2\right)",
        Basis.FirstPrinciples("a flat ring"),
        [
            new Symbol("n", "how many washers", TradeUnit.One),
            new Symbol("D", "outside diameter", TradeUnit.Millimeter),
            new Symbol("d", "inside diameter", TradeUnit.Millimeter),
        ]);

    internal static Formula Measured { get; } = new(
        "support.measured",
        new Symbol("A", "Area with its allowance", TradeUnit.SquareMeter),
        "A_m * (1 + x)",
        @"A_\mathrm{m}\,(1 + x)",
        Basis.Judgement("the user's own measurement and allowance"),
        [
            new Symbol("A_m", "area as measured", TradeUnit.SquareMeter),
            new Symbol("x", "allowance", TradeUnit.One),
        ]);
}
