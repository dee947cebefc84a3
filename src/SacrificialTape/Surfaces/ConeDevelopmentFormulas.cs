using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>The formulas of an unrolled cone as the workings show them.</summary>
internal static class ConeDevelopmentFormulas
{
    private static readonly Basis Sector = Basis.FirstPrinciples("a right cone unrolls into a sector of a ring about its tip");

    private static readonly Symbol Large = new("D_1", "diameter of the low edge, the large end", TradeUnit.Millimeter);
    private static readonly Symbol Small = new("D_2", "diameter of the small end; zero at a tip", TradeUnit.Millimeter);
    private static readonly Symbol Slant = new("s", "slant of the wall", TradeUnit.Millimeter);

    internal static Formula Outer { get; } = new(
        "cone.outer-radius", new Symbol("R_1", "Outer radius of the sector", TradeUnit.Millimeter),
        "D_1 * s / (D_1 - D_2)", @"\frac{D_1\,s}{D_1 - D_2}", Sector, [Large, Slant, Small]);

    internal static Formula Inner { get; } = new(
        "cone.inner-radius", new Symbol("R_2", "Inner radius of the sector", TradeUnit.Millimeter),
        "D_2 * s / (D_1 - D_2)", @"\frac{D_2\,s}{D_1 - D_2}", Sector, [Small, Slant, Large]);

    internal static Formula Angle { get; } = new(
        "cone.angle", new Symbol("psi", "Angle of the sector", TradeUnit.Degree),
        "180 * (D_1 - D_2) / s", @"\frac{180\,(D_1 - D_2)}{s}", Sector, [Large, Small, Slant]);
}
