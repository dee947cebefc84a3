namespace SacrificialTape.Provenance;

/// <content>Dimensions of pipe fittings, flanges and dished heads.</content>
public static partial class References
{
    /// <summary>Length of butt-weld reducers.</summary>
    internal static SourceReference ReducerLengths { get; } = new(
        "asme-b16-9-reducers",
        "ASME B16.9",
        "reducers, dimension H",
        "End-to-end length in mm by the large end, NPS 1 to 24",
        SourceReading.Recalled);

    /// <summary>Centre-to-end dimensions of equal butt-weld tees.</summary>
    internal static SourceReference EqualTees { get; } = new(
        "asme-b16-9-tees",
        "ASME B16.9",
        "straight tees, dimensions C and M, through a published table of them",
        "Centre to end of run and outlet in mm, NPS 1/2 to 48; tolerance 2 mm to NPS 24, 5 mm at NPS 48",
        SourceReading.SecondHand);

    /// <summary>Centre-to-end dimension of the branch of reducing butt-weld tees.</summary>
    internal static SourceReference ReducingTees { get; } = new(
        "asme-b16-9-reducing-tees",
        "ASME B16.9",
        "reducing tees, dimension M",
        "Centre to end of the reduced outlet in mm, NPS 2 to 12",
        SourceReading.Recalled);

    /// <summary>Length and form of butt-weld caps.</summary>
    internal static SourceReference CapLengths { get; } = new(
        "asme-b16-9-caps",
        "ASME B16.9",
        "caps, dimension E",
        "Overall length in mm, NPS 1/2 to 24; ellipsoidal form",
        SourceReading.Recalled);

    /// <summary>Flanges of class 150.</summary>
    internal static SourceReference FlangesClass150 { get; } = new(
        "asme-b16-5-class-150",
        "ASME B16.5",
        "class 150, through two published tables that agree within 1 mm",
        "Outside diameter, thickness including the raised face, bolt circle, bolt holes, raised-face diameter, NPS 1/2 to 24",
        SourceReading.SecondHand);

    /// <summary>Height of the raised face of class 150.</summary>
    internal static SourceReference RaisedFaceHeight { get; } = new(
        "asme-b16-5-raised-face",
        "ASME B16.5",
        "class 150, raised face",
        "Height of the raised face 1.6 mm (1/16 in); some editions print 2 mm",
        SourceReading.Recalled);

    /// <summary>Torispherical heads of the Klöpper form.</summary>
    internal static SourceReference KloepperForm { get; } = new(
        "din-28011",
        "DIN 28011",
        "form and depth",
        "Inside crown radius = outside diameter, inside knuckle radius = 0.1 of it; inside depth 0.1935 Da - 0.455 s",
        SourceReading.Recalled);

    /// <summary>Torispherical heads of the Korbbogen form.</summary>
    internal static SourceReference KorbbogenForm { get; } = new(
        "din-28013",
        "DIN 28013",
        "form and depth",
        "Inside crown radius = 0.8, inside knuckle radius = 0.154 of the outside diameter; inside depth 0.255 Da - 0.635 s",
        SourceReading.Recalled);

    private static IEnumerable<SourceReference> Fittings =>
    [
        ReducerLengths, EqualTees, ReducingTees, CapLengths, FlangesClass150, RaisedFaceHeight, KloepperForm, KorbbogenForm,
    ];
}
