namespace SacrificialTape.Provenance;

/// <content>Bends: fittings, area, strain of a strip on a curved surface.</content>
public static partial class References
{
    /// <summary>Centre-to-end dimension of long radius elbows.</summary>
    internal static SourceReference LongRadiusElbows { get; } = new(
        "asme-b16-9-long-radius",
        "ASME B16.9",
        "table of long radius elbows, through a table of reducing elbows with the same dimension",
        "Long radius 90 degree elbows: centre to end 1.5 NPS, rounded to whole mm; NPS 4 to 24",
        SourceReading.SecondHand);

    /// <summary>Short radius returns, from which the short radius follows.</summary>
    internal static SourceReference ShortRadiusReturns { get; } = new(
        "asme-b16-9-short-radius",
        "ASME B16.9",
        "table of short radius 180 degree returns",
        "Short radius: centre to centre of a return is twice the centre-to-end dimension, 1.0 NPS",
        SourceReading.SecondHand);

    /// <summary>Geodesics spreading on a curved surface.</summary>
    internal static SourceReference JacobiEquation { get; } = new(
        "jacobi-equation",
        "Any text on differential geometry",
        "Jacobi equation J'' + K J = 0",
        "Lines beside a geodesic of a surface of curvature K are shorter or longer by cos or cosh of sqrt(|K|) times their distance",
        SourceReading.Recalled);

    private static IEnumerable<SourceReference> Bends => [LongRadiusElbows, ShortRadiusReturns, JacobiEquation];
}
