namespace SacrificialTape.Provenance;

/// <content>Documents behind lives with their uncertainty.</content>
public static partial class References
{
    /// <summary>The normal distribution function.</summary>
    internal static SourceReference NormalDistribution { get; } = new(
        "west-2005-normal",
        "West, Better approximations to cumulative normal functions, Wilmott Magazine (2005), after Hart, Computer Approximations (1968); Abramowitz and Stegun",
        "Hart's algorithm 5666; 26.2.23 for the start of the inverse",
        "Coefficients of the normal distribution function in double precision, and a first value of its inverse",
        SourceReading.Recalled);

    /// <summary>Least thickness of hot-dip zinc.</summary>
    internal static SourceReference HotDipThickness { get; } = new(
        "iso-1461-2009-least-thickness",
        "ISO 1461:2009",
        "coating thickness on parts that are not centrifuged",
        "Least local and mean thickness by thickness of the steel: over 6 mm 70 and 85 um, over 3 to 6 mm 55 and 70, 1.5 to 3 mm 45 and 55, thinner 35 and 45",
        SourceReading.SecondHand);

    private static IEnumerable<SourceReference> Spread => [NormalDistribution, HotDipThickness];
}
