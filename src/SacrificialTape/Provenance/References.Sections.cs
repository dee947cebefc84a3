namespace SacrificialTape.Provenance;

/// <content>Dimensions of rolled and hollow sections.</content>
public static partial class References
{
    /// <summary>I sections of EN 10365.</summary>
    internal static SourceReference OpenProfileTable { get; } = new(
        "en-10365-open-table",
        "EN 10365",
        "dimensions through two open data sets of profiles; areas per metre through one of them, of which only rows that agree with their own dimensions were used",
        "IPE 80 to 600, HEB 100 to 600: dimensions; IPE 100, IPE 200, HEB 100, HEB 200: area per metre 0.400, 0.768, 0.567, 1.15 m2/m",
        SourceReading.SecondHand);

    /// <summary>Wide-flange sections of the light series.</summary>
    internal static SourceReference WideFlangeTable { get; } = new(
        "euronorm-53-62-he-a",
        "Euronorm 53-62",
        "HE-A, through a published table",
        "HEA 100 to 600: dimensions, area per metre 0.56 to 2.31 m2/m",
        SourceReading.SecondHand);

    /// <summary>I sections and channels by memory.</summary>
    internal static SourceReference SectionsRecalled { get; } = new(
        "sections-catalogue",
        "Catalogues of rolled sections; EN 10365",
        "IPE, HEB and UPN",
        "UPN 200: dimensions; IPE 300, IPE 600, HEB 300, UPN 200: area per metre 1.160, 2.015, 1.732, 0.661 m2/m; UPN radii 11.5 and 6 mm, taper 8 %",
        SourceReading.Recalled);

    /// <summary>Equal-leg angles.</summary>
    internal static SourceReference AnglesRecalled { get; } = new(
        "en-10056-1",
        "EN 10056-1",
        "equal-leg angles",
        "50 x 50 x 5 with radii 7 and 3.5 mm: 0.194 m2/m; 100 x 100 x 10 with 12 and 6 mm: 0.390 m2/m",
        SourceReading.Recalled);

    /// <summary>Cold-formed square hollow sections.</summary>
    internal static SourceReference ColdSquareHollow { get; } = new(
        "en-10219-2-square-table",
        "EN 10219-2",
        "square hollow sections, through the table of an open structural library (MIT licence)",
        "100 x 100 x 5, 6 and 8: 0.383, 0.379 and 0.366 m2/m",
        SourceReading.SecondHand);

    /// <summary>Hot-finished square hollow sections.</summary>
    internal static SourceReference HotSquareHollow { get; } = new(
        "en-10210-2-square",
        "EN 10210-2",
        "square hollow sections",
        "100 x 100 x 5: 0.387 m2/m",
        SourceReading.Recalled);

    /// <summary>Corner radii of hot-finished hollow sections.</summary>
    internal static SourceReference HotHollowCorners { get; } = new(
        "en-10210-2-corners",
        "EN 10210-2",
        "outside corner radius for calculation",
        "1.5 T",
        SourceReading.Recalled);

    /// <summary>Corner radii of cold-formed hollow sections.</summary>
    internal static SourceReference ColdHollowCorners { get; } = new(
        "en-10219-2-corners",
        "EN 10219-2",
        "outside corner radius for calculation",
        "2.0 T up to 6 mm, 2.5 T above 6 up to 10 mm, 3.0 T above 10 mm",
        SourceReading.Recalled);

    private static IEnumerable<SourceReference> Sections =>
    [
        OpenProfileTable, WideFlangeTable, SectionsRecalled, AnglesRecalled, ColdSquareHollow, HotSquareHollow,
        HotHollowCorners, ColdHollowCorners,
    ];
}
