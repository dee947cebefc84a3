using SacrificialTape.Provenance;

namespace SacrificialTape.Exposure;

/// <summary>On what the numbers of this room rest.</summary>
internal static class ExposureSources
{
    internal static Basis Categories { get; } = Basis.From(References.CorrosivityCategories);

    internal static Basis Extreme { get; } = Basis.From(References.CorrosivityCategoryExtreme);
}
