using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of shells as the workings show them.</summary>
internal static class ShellFormulas
{
    private static readonly Basis Cylinder = Basis.FirstPrinciples("a cylinder unrolls into a rectangle; what is open is not covered");

    private static readonly Symbol Count = new("n", "how many of them", TradeUnit.One);

    internal static Formula GrossArea { get; } = new(
        "shell.gross-area",
        new Symbol("A_gross", "Shell with its openings", TradeUnit.SquareMeter),
        "pi * D * h / 1e6",
        @"\frac{\pi D h}{10^{6}}",
        Cylinder,
        [
            new Symbol("D", "outside diameter of the shell", TradeUnit.Millimeter),
            new Symbol("h", "length or height of the shell", TradeUnit.Millimeter),
        ]);

    internal static Formula RoundOpenings { get; } = new(
        "shell.round-openings",
        new Symbol("A_round", "Round openings of one kind", TradeUnit.SquareMeter),
        "n * A_hole",
        @"n A_\mathrm{hole}",
        Cylinder,
        [Count, TeeFormulas.HoleArea.Result]);

    internal static Formula RectangularOpenings { get; } = new(
        "shell.rectangular-openings",
        new Symbol("A_rectangular", "Rectangular openings of one kind", TradeUnit.SquareMeter),
        "n * a * b / 1e6",
        @"\frac{n\,a\,b}{10^{6}}",
        Cylinder,
        [
            Count,
            new Symbol("a", "extent along the shell", TradeUnit.Millimeter),
            new Symbol("b", "extent round the shell, on the steel", TradeUnit.Millimeter),
        ]);

    internal static Formula Area { get; } = new(
        "shell.area",
        new Symbol("A", "Area of the shell", TradeUnit.SquareMeter),
        "A_gross - A_openings",
        @"A_\mathrm{gross} - A_\mathrm{openings}",
        Cylinder,
        [GrossArea.Result, new Symbol("A_openings", "sum of the openings above", TradeUnit.SquareMeter)]);
}
