using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of pipe surfaces as the workings show them.</summary>
internal static class PipeFormulas
{
    private static readonly Basis Cylinder = Basis.FirstPrinciples("a cylinder unrolls into a rectangle");

    internal static Formula Circumference { get; } = new(
        "pipe.circumference",
        new Symbol("C", "Circumference", TradeUnit.Millimeter),
        "pi * D",
        @"\pi D",
        Cylinder,
        [new Symbol("D", "outside diameter", TradeUnit.Millimeter)]);

    internal static Formula Area { get; } = new(
        "pipe.area",
        new Symbol("A", "Area of the pipe", TradeUnit.SquareMeter),
        "C * h / 1e6",
        @"\frac{C\,h}{10^{6}}",
        Cylinder,
        [
            new Symbol("C", "circumference", TradeUnit.Millimeter),
            new Symbol("h", "length of pipe", TradeUnit.Millimeter),
        ]);
}
