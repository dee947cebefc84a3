using SacrificialTape.Provenance;

namespace SacrificialTape.Galvanic;

/// <summary>On what the conductivities of this room rest.</summary>
internal static class GalvanicSources
{
    internal static Basis SodiumChloride { get; } = Basis.From(References.SodiumChlorideConductivity);

    internal static Basis SaltTable { get; } = Basis.From(References.SaltConductivity);
}
