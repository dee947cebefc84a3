using SacrificialTape.Provenance;

namespace SacrificialTape.SiteConditions;

/// <summary>On what the tables of this room rest.</summary>
internal static class SiteSources
{
    internal static Basis NearestNameRead { get; } = Basis.From(References.SurfaceGradeNames, "nearest only: photographs against written definitions");

    internal static Basis NearestNameRecalled { get; } = Basis.From(References.SurfaceGradeNamesRecalled, "nearest only: photographs against written definitions");

    internal static Basis ProfileSegments { get; } = Basis.From(References.ProfileComparators);
}
