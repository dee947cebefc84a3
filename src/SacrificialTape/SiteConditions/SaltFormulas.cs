using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.SiteConditions;

/// <summary>The formula of salts washed off a surface as the workings show it.</summary>
internal static class SaltFormulas
{
    internal static Formula Density { get; } = new(
        "site.salt-density",
        new Symbol("s", "Soluble salts on the surface", TradeUnit.MilligramPerSquareMeter),
        "500 * V / A * (k_2 - k_1)",
        @"c\,\frac{V}{A}\,(k_2-k_1),\quad c = 5\ \mathrm{kg\,m^{-2}\,S^{-1}}",
        Basis.From(References.SaltConductivityConversion),
        [
            new Symbol("V", "water in the patch", TradeUnit.Milliliter),
            new Symbol("A", "area under the patch", TradeUnit.SquareMillimeter),
            new Symbol("k_2", "conductivity after", TradeUnit.MicrosiemensPerCentimeter),
            new Symbol("k_1", "conductivity before", TradeUnit.MicrosiemensPerCentimeter),
        ]);
}
