using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formula of a strip centred on a weld.</summary>
internal static class WeldStripFormulas
{
    internal static Formula Reach { get; } = new(
        "weld-strip.reach",
        new Symbol("q", "Reach beyond the weld on each side", TradeUnit.Millimeter),
        "(w - f) / 2",
        @"\frac{w - f}{2}",
        Basis.FirstPrinciples("the strip lies centred on the weld"),
        [
            new Symbol("w", "strip width", TradeUnit.Millimeter),
            new Symbol("f", "width of the weld's face", TradeUnit.Millimeter),
        ]);
}
