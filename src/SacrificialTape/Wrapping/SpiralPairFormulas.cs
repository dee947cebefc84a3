using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formula of two spirals of opposite hand on one another.</summary>
internal static class SpiralPairFormulas
{
    internal static Formula Layers { get; } = new(
        "spiral-pair.layers",
        new Symbol("n_pair", "Layers everywhere of both spirals", TradeUnit.One),
        "n_first + n_second",
        @"n_\mathrm{first} + n_\mathrm{second}",
        Basis.FirstPrinciples("over every spot lies at least what each spiral promises; spirals of opposite hand cross, so that somewhere both are at their least"),
        [
            new Symbol("n_first", "layers everywhere of the first spiral", TradeUnit.One),
            new Symbol("n_second", "layers everywhere of the second spiral", TradeUnit.One),
        ]);
}
