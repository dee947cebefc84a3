using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of reducers as the workings show them.</summary>
internal static class ReducerFormulas
{
    private static readonly Basis Frustum = Basis.FirstPrinciples("a right cone unrolls into a sector of a ring");

    private static readonly Basis Oblique = Basis.FirstPrinciples(
        "straight lines join two circles whose centres are offset by the difference of the radii; the area element of that surface, integrated along the lines, leaves one integral round the circle");

    internal static Formula Slant { get; } = new(
        "reducer.slant",
        new Symbol("s", "Slant of the wall", TradeUnit.Millimeter),
        "sqrt(H * H + pow((D_1 - D_2) / 2, 2))",
        @"\sqrt{H^2 + \left(\frac{D_1 - D_2}{2}\right)^2}",
        Frustum,
        [
            new Symbol("H", "length between the ends", TradeUnit.Millimeter),
            new Symbol("D_1", "diameter of the large end", TradeUnit.Millimeter),
            new Symbol("D_2", "diameter of the small end", TradeUnit.Millimeter),
        ]);

    internal static Formula ConcentricArea { get; } = new(
        "reducer.concentric-area",
        new Symbol("A", "Area of the reducer", TradeUnit.SquareMeter),
        "pi * (D_1 + D_2) / 2 * s / 1e6",
        @"\frac{\pi\,(D_1 + D_2)\,s}{2 \cdot 10^{6}}",
        Frustum,
        [
            new Symbol("D_1", "diameter of the large end", TradeUnit.Millimeter),
            new Symbol("D_2", "diameter of the small end", TradeUnit.Millimeter),
            new Symbol("s", "slant of the wall", TradeUnit.Millimeter),
        ]);

    internal static Formula MeanSlant { get; } = new(
        "reducer.mean-slant",
        new Symbol("s_m", "Mean slant round the wall", TradeUnit.Millimeter),
        "S / N",
        @"\frac{S}{N}",
        Oblique,
        [
            new Symbol("S", "sum of sqrt(H^2 + ((D_1 - D_2) (1 + cos t) / 2)^2) over the stations t; doubled in number until the mean stands still to 1e-13 of itself", TradeUnit.Millimeter),
            new Symbol("N", "number of stations evenly round the circle", TradeUnit.One),
        ]);

    internal static Formula EccentricArea { get; } = new(
        "reducer.eccentric-area",
        new Symbol("A", "Area of the reducer", TradeUnit.SquareMeter),
        "pi * (D_1 + D_2) / 2 * s_m / 1e6",
        @"\frac{\pi\,(D_1 + D_2)\,s_\mathrm{m}}{2 \cdot 10^{6}}",
        Oblique,
        [
            new Symbol("D_1", "diameter of the large end", TradeUnit.Millimeter),
            new Symbol("D_2", "diameter of the small end", TradeUnit.Millimeter),
            new Symbol("s_m", "mean slant round the wall", TradeUnit.Millimeter),
        ]);

    internal static Formula SlopingSide { get; } = new(
        "reducer.sloping-side",
        new Symbol("s_long", "Sloping side, opposite the straight one", TradeUnit.Millimeter),
        "sqrt(H * H + pow(D_1 - D_2, 2))",
        @"\sqrt{H^2 + (D_1 - D_2)^2}",
        Oblique,
        [
            new Symbol("H", "length between the ends, which is the straight side", TradeUnit.Millimeter),
            new Symbol("D_1", "diameter of the large end", TradeUnit.Millimeter),
            new Symbol("D_2", "diameter of the small end", TradeUnit.Millimeter),
        ]);

    internal static Formula Generator { get; } = new(
        "reducer.generator",
        new Symbol("g", "Generator, from end to end along the steel", TradeUnit.Millimeter),
        "sqrt(H * H + pow((D_1 - D_2) * sin(t * pi / 360), 2))",
        @"\sqrt{H^2 + \left((D_1 - D_2)\sin\tfrac{t}{2}\right)^2}",
        Oblique,
        [
            new Symbol("H", "length between the ends", TradeUnit.Millimeter),
            new Symbol("D_1", "diameter of the large end", TradeUnit.Millimeter),
            new Symbol("D_2", "diameter of the small end", TradeUnit.Millimeter),
            new Symbol("t", "angle round the ends, from the straight side", TradeUnit.Degree),
        ]);
}
