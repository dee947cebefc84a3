using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>On what the dimensions and corner radii of sections rest.</summary>
internal static class SectionSources
{
    internal static Basis OpenProfiles { get; } = Basis.From(References.OpenProfileTable);

    internal static Basis WideFlange { get; } = Basis.From(References.WideFlangeTable);

    internal static Basis Catalogue { get; } = Basis.From(References.SectionsRecalled);

    internal static Basis Angles { get; } = Basis.From(References.AnglesRecalled);

    internal static Basis ColdSquare { get; } = Basis.From(References.ColdSquareHollow);

    internal static Basis HotSquare { get; } = Basis.From(References.HotSquareHollow);

    internal static Basis HotCorners { get; } = Basis.From(References.HotHollowCorners);

    internal static Basis ColdCorners { get; } = Basis.From(References.ColdHollowCorners);
}
