using SacrificialTape.Provenance;

namespace SacrificialTape.SiteConditions;

/// <summary>On what the count of open hours rests.</summary>
internal static class WindowSources
{
    internal static Basis Sum { get; } = Basis.FirstPrinciples("a sum over the windows");
}
