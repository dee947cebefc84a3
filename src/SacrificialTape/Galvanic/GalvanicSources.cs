using SacrificialTape.Provenance;

namespace SacrificialTape.Galvanic;

/// <summary>On what the conductivities of this room rest.</summary>
internal static class GalvanicSources
{
    internal static Basis SodiumChloride { get; } = Basis.From(References.SodiumChlorideConductivity);

    internal static Basis MarineByRegion { get; } = Basis.From(References.ClassRulesProtection);

    internal static Basis MarineByDepth { get; } = Basis.From(References.DnvDesignDemand);

    internal static Basis SoilAnodeMagnesium { get; } = Basis.From(References.SoilAnodeOutput, "constant of magnesium on a well coated structure");

    internal static Basis SoilAnodeZinc { get; } = Basis.From(References.SoilAnodeZincConstants);

    internal static Basis SodiumChlorideMolar { get; } = Basis.From(References.SodiumChlorideMolar, "molar conductivity straight against the root of the strength between the entries, as Kohlrausch found");

    internal static Basis SaltTable { get; } = Basis.From(References.SaltConductivity);
}
