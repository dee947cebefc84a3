namespace SacrificialTape.Provenance;

/// <content>Surfaces of revolution: shortest lines on them.</content>
public static partial class References
{
    /// <summary>Shortest lines on a surface of revolution.</summary>
    internal static SourceReference ClairautRelation { get; } = new(
        "clairaut-relation",
        "Any text on differential geometry",
        "Clairaut's relation",
        "Along a geodesic of a surface of revolution the radius times the sine of the angle to the meridian stays the same",
        SourceReading.Recalled);

    private static IEnumerable<SourceReference> Revolved => [ClairautRelation];
}
