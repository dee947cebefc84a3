using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Tapes;

/// <summary>The formulas of bent foil as the workings show them.</summary>
internal static class FoilBendingFormulas
{
    private static readonly Basis PlaneSections = Basis.FirstPrinciples(
        "the middle of the foil keeps its length, the outside of the bend is longer by the ratio of the radii; sections stay plane");

    private static readonly Symbol Thickness = new("t", "foil thickness", TradeUnit.Millimeter);

    internal static Formula Strain { get; } = new(
        "foil.bending-strain",
        new Symbol("e_b", "Stretch of the outside of the bent foil", TradeUnit.One),
        "t / (2 * r + t)",
        @"\frac{t}{2r+t}",
        PlaneSections,
        [Thickness, new Symbol("r", "radius that the foil lies on", TradeUnit.Millimeter)]);

    internal static Formula SmallestRadius { get; } = new(
        "foil.smallest-bending-radius",
        new Symbol("r", "Smallest radius for the allowed stretch", TradeUnit.Millimeter),
        "t * (1 - e) / (2 * e)",
        @"\frac{t\,(1-e)}{2e}",
        PlaneSections,
        [Thickness, new Symbol("e", "allowed stretch of the outside", TradeUnit.One)]);
}
