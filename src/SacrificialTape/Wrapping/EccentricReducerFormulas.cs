using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of strips along the generators of an eccentric reducer as the workings show them.</summary>
internal static class EccentricReducerFormulas
{
    private static readonly Basis Unrolled = Basis.FirstPrinciples(
        "the lines that join two circles meet in one point: the wall is a cone and unrolls; a strip centred on such a line is straight there");

    private static readonly Symbol EndLap = new("e_l", "end lap on the tape of the pipe at each end", TradeUnit.Millimeter);
    private static readonly Symbol Passes = new("k", "passes", TradeUnit.One);

    internal static Formula SmallEndLap { get; } = new(
        "eccentric.small-end-lap", new Symbol("o_2", "Lap at the small end", TradeUnit.Millimeter),
        "w - pi * D_2 / n", @"w - \frac{\pi D_2}{n}", Unrolled,
        [
            new Symbol("w", "strip width", TradeUnit.Millimeter),
            new Symbol("D_2", "diameter of the small end", TradeUnit.Millimeter),
            new Symbol("n", "strips side by side", TradeUnit.One),
        ]);

    internal static Formula Strip { get; } = new(
        "eccentric.strip", new Symbol("L", "Strip along one generator", TradeUnit.Millimeter),
        "g + u + 2 * e_l", @"g + u + 2e_\ell", Unrolled,
        [
            new Symbol("g", "generator", TradeUnit.Millimeter),
            new Symbol("u", "by which the rims, unrolled, reach beyond the generator within the strip's width, both ends together", TradeUnit.Millimeter),
            EndLap,
        ]);

    internal static Formula AllStrips { get; } = new(
        "eccentric.all-strips", new Symbol("L_all", "Strip of all passes", TradeUnit.Millimeter),
        "k * L_sum", @"k\,L_\mathrm{sum}", Unrolled,
        [Passes, new Symbol("L_sum", "length of the strips of one pass together", TradeUnit.Millimeter)]);

    internal static Formula Trim { get; } = new(
        "eccentric.trim", new Symbol("T", "Cut off at the rims", TradeUnit.Millimeter),
        "L_all - k * (2 * n * e_l + A_kept * 1e6 / w)", @"L_\mathrm{all} - k\left(2n\,e_\ell + \frac{10^{6}\,A_\mathrm{kept}}{w}\right)", Unrolled,
        [
            new Symbol("L_all", "strip of all passes", TradeUnit.Millimeter), Passes,
            new Symbol("n", "strips side by side", TradeUnit.One), EndLap,
            new Symbol("A_kept", "sum over the strips of one pass of what lies between the rims", TradeUnit.SquareMeter),
            new Symbol("w", "strip width", TradeUnit.Millimeter),
        ]);
}
