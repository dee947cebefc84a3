using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of flanges as the workings show them.</summary>
internal static class FlangeFormulas
{
    private static readonly Basis Rings = Basis.FirstPrinciples("a cylinder and flat rings less round holes");

    private static readonly Symbol Outside = new("D", "outside diameter of the flange", TradeUnit.Millimeter);
    private static readonly Symbol Holes = new("n", "number of bolt holes", TradeUnit.One);
    private static readonly Symbol Hole = new("d", "diameter of a bolt hole", TradeUnit.Millimeter);

    internal static Formula Rim { get; } = new(
        "flange.rim",
        new Symbol("A_rim", "Rim", TradeUnit.SquareMeter),
        "pi * D * t / 1e6",
        @"\frac{\pi D t}{10^{6}}",
        Rings,
        [Outside, new Symbol("t", "thickness at the rim, without the raised face", TradeUnit.Millimeter)]);

    internal static Formula Back { get; } = new(
        "flange.back",
        new Symbol("A_back", "Back less its bolt holes", TradeUnit.SquareMeter),
        "pi / 4 * (D * D - D_hub * D_hub - n * d * d) / 1e6",
        @"\frac{\pi}{4 \cdot 10^{6}}\left(D^2 - D_\mathrm{hub}^2 - n d^2\right)",
        Rings,
        [Outside, new Symbol("D_hub", "diameter of the hub, or of the pipe, at the back", TradeUnit.Millimeter), Holes, Hole]);

    internal static Formula Front { get; } = new(
        "flange.front",
        new Symbol("A_front", "Front outside the raised face less its bolt holes", TradeUnit.SquareMeter),
        "pi / 4 * (D * D - D_face * D_face - n * d * d) / 1e6",
        @"\frac{\pi}{4 \cdot 10^{6}}\left(D^2 - D_\mathrm{face}^2 - n d^2\right)",
        Rings,
        [Outside, new Symbol("D_face", "diameter of the raised face", TradeUnit.Millimeter), Holes, Hole]);

    internal static Formula Area { get; } = new(
        "flange.area",
        new Symbol("A", "Area of the parts that are covered", TradeUnit.SquareMeter),
        "A_rim + A_back + A_front",
        @"A_\mathrm{rim} + A_\mathrm{back} + A_\mathrm{front}",
        Rings,
        [
            new Symbol("A_rim", "rim, 0 where it is left out", TradeUnit.SquareMeter),
            new Symbol("A_back", "back, 0 where it is left out", TradeUnit.SquareMeter),
            new Symbol("A_front", "front, 0 where it is left out", TradeUnit.SquareMeter),
        ]);

    internal static Formula RimThickness { get; } = new(
        "flange.rim-thickness",
        new Symbol("t", "Thickness at the rim", TradeUnit.Millimeter),
        "t_f - f",
        "t_f - f",
        FittingSources.RaisedFace,
        [
            new Symbol("t_f", "thickness by the table, raised face included", TradeUnit.Millimeter),
            new Symbol("f", "height of the raised face", TradeUnit.Millimeter),
        ]);
}
