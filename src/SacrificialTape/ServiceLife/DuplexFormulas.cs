using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The formula of paint over zinc, as the workings show it.</summary>
internal static class DuplexFormulas
{
    internal static Basis Paper { get; } = Basis.From(References.DuplexOverview);

    internal static Formula Duplex { get; } = new(
        "life.duplex",
        new Symbol("t_d", "Life of zinc and paint together", TradeUnit.Year),
        "k * (t_z + t_p)",
        @"k\,(t_z + t_p)",
        Basis.From(References.DuplexOverview, "made for hot-dip zinc, not for foil on adhesive"),
        [
            new Symbol("k", "factor", TradeUnit.One),
            new Symbol("t_z", "life of the zinc by itself", TradeUnit.Year),
            new Symbol("t_p", "life of the paint by itself", TradeUnit.Year),
        ]);
}
