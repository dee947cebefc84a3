using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Tapes;

/// <summary>The formulas of foil and rolls as the workings show them.</summary>
internal static class FoilFormulas
{
    internal static Formula Mass { get; } = new(
        "foil.mass",
        new Symbol("m", "Zinc in the strip", TradeUnit.Kilogram),
        "L * w * t * rho / 1e9",
        @"\frac{L\,w\,t\,\rho}{10^{9}}",
        Basis.From(References.ZincSheetConversion),
        [
            new Symbol("L", "length of strip", TradeUnit.Millimeter),
            new Symbol("w", "width of strip", TradeUnit.Millimeter),
            new Symbol("t", "foil thickness", TradeUnit.Millimeter),
            new Symbol("rho", "density of zinc", TradeUnit.KilogramPerCubicMeter),
        ]);

    internal static Formula RollLength { get; } = new(
        "roll.length",
        new Symbol("L", "Length on the roll", TradeUnit.Millimeter),
        "pi * (D + d) * (D - d) / (4 * t)",
        @"\frac{\pi\,(D+d)(D-d)}{4\,t}",
        Basis.From(References.MaterialOnARoll),
        [
            new Symbol("D", "outside diameter of the roll", TradeUnit.Millimeter),
            new Symbol("d", "diameter of its core", TradeUnit.Millimeter),
            new Symbol("t", "thickness of one wound layer", TradeUnit.Millimeter),
        ]);

    internal static Formula RollPitch { get; } = new(
        "roll.layer-thickness",
        new Symbol("t", "Thickness of one wound layer", TradeUnit.Millimeter),
        "pi * (D + d) * (D - d) / (4 * L)",
        @"\frac{\pi\,(D+d)(D-d)}{4\,L}",
        Basis.From(References.MaterialOnARoll),
        [
            new Symbol("D", "outside diameter of the roll", TradeUnit.Millimeter),
            new Symbol("d", "diameter of its core", TradeUnit.Millimeter),
            new Symbol("L", "known length on the roll", TradeUnit.Millimeter),
        ]);
}
