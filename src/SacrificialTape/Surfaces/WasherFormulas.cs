using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of washers cut from strip as the workings show them.</summary>
internal static class WasherFormulas
{
    private static readonly Basis Rows = Basis.FirstPrinciples("circles of one size in rows, their middles no closer than a washer and the gap");

    private static readonly Symbol Outside = new("D", "outside diameter", TradeUnit.Millimeter);
    private static readonly Symbol Gap = new("g", "gap left between washers", TradeUnit.Millimeter);
    private static readonly Symbol Width = new("w", "width of the strip", TradeUnit.Millimeter);
    private static readonly Symbol Length = new("l", "length of the strip", TradeUnit.Millimeter);
    private static readonly Symbol Count = new("N", "Washers from the strip", TradeUnit.One);
    private static readonly Symbol RowCount = new("m", "Rows", TradeUnit.One);

    internal static Formula StraightRows { get; } = new(
        "washer.straight-rows", RowCount, "floor((w + g) / (D + g))", @"\left\lfloor\frac{w + g}{D + g}\right\rfloor", Rows, [Width, Gap, Outside]);

    internal static Formula StraightEach { get; } = new(
        "washer.straight-each",
        new Symbol("q", "Washers in a row", TradeUnit.One),
        "floor((l + g) / (D + g))",
        @"\left\lfloor\frac{l + g}{D + g}\right\rfloor",
        Rows,
        [Length, Gap, Outside]);

    internal static Formula StraightCount { get; } = new(
        "washer.straight-count", Count, "m * q", "m q", Rows, [RowCount, StraightEach.Result]);

    internal static Formula RowDistance { get; } = new(
        "washer.row-distance",
        new Symbol("v", "Distance of the rows", TradeUnit.Millimeter),
        "(w - D) / (m - 1)",
        @"\frac{w - D}{m - 1}",
        Rows,
        [Width, Outside, RowCount]);

    internal static Formula Step { get; } = new(
        "washer.step",
        new Symbol("p", "Step along a row", TradeUnit.Millimeter),
        "max(D + g, 2 * sqrt(max(0, pow(D + g, 2) - v * v)))",
        @"\max\left(D + g,\ 2\sqrt{\max\left(0, (D + g)^2 - v^2\right)}\right)",
        Rows,
        [Outside, Gap, RowDistance.Result]);

    internal static Formula FirstRow { get; } = new(
        "washer.first-row",
        new Symbol("q_1", "Washers in the first row and every other", TradeUnit.One),
        "floor((l - D) / p) + 1",
        @"\left\lfloor\frac{l - D}{p}\right\rfloor + 1",
        Rows,
        [Length, Outside, Step.Result]);

    internal static Formula SecondRow { get; } = new(
        "washer.second-row",
        new Symbol("q_2", "Washers in the rows between", TradeUnit.One),
        "floor((l - D - p / 2) / p) + 1",
        @"\left\lfloor\frac{l - D - p/2}{p}\right\rfloor + 1",
        Rows,
        [Length, Outside, Step.Result]);

    internal static Formula StaggeredCount { get; } = new(
        "washer.staggered-count",
        Count,
        "ceil(m / 2) * q_1 + floor(m / 2) * q_2",
        @"\left\lceil\frac{m}{2}\right\rceil q_1 + \left\lfloor\frac{m}{2}\right\rfloor q_2",
        Rows,
        [RowCount, FirstRow.Result, SecondRow.Result]);

    internal static Formula Yield { get; } = new(
        "washer.yield",
        new Symbol("y", "Area of the washers over area of the strip", TradeUnit.One),
        "N * pi / 4 * (D - d) * (D + d) / (w * l)",
        @"\frac{N \pi \left(D^2 - d^2\right)}{4\,w\,l}",
        Rows,
        [Count, Outside, new Symbol("d", "inside diameter", TradeUnit.Millimeter), Width, Length]);
}
