namespace SacrificialTape.Surfaces;

/// <summary>
/// Outside diameters by nominal size. ASME column: ASME B36.10M as carried by an open piping library; ISO column and
/// the DN above 750: recalled, check before use. A missing ISO value means that series 1 does not list the size.
/// </summary>
internal static class PipeSizeTable
{
    internal static ReadOnlySpan<Row> Rows => Table;

    private static readonly Row[] Table =
    [
        new("1/2", 15, 21.3, 21.3), new("3/4", 20, 26.7, 26.9), new("1", 25, 33.4, 33.7),
        new("1 1/4", 32, 42.2, 42.4), new("1 1/2", 40, 48.3, 48.3), new("2", 50, 60.3, 60.3),
        new("2 1/2", 65, 73.0, 76.1), new("3", 80, 88.9, 88.9), new("3 1/2", 90, 101.6, null),
        new("4", 100, 114.3, 114.3), new("5", 125, 141.3, 139.7), new("6", 150, 168.3, 168.3),
        new("8", 200, 219.1, 219.1), new("10", 250, 273.0, 273.0), new("12", 300, 323.8, 323.9),
        new("14", 350, 355.6, 355.6), new("16", 400, 406.4, 406.4), new("18", 450, 457, 457),
        new("20", 500, 508, 508), new("22", 550, 559, null), new("24", 600, 610, 610),
        new("26", 650, 660, null), new("28", 700, 711, 711), new("30", 750, 762, null),
        new("32", 800, 813, 813), new("34", 850, 864, null), new("36", 900, 914, 914),
        new("38", 950, 965, null), new("40", 1000, 1016, 1016), new("42", 1050, 1067, 1067),
        new("44", 1100, 1118, 1118), new("46", 1150, 1168, null), new("48", 1200, 1219, 1219),
    ];

    internal readonly record struct Row(string Nps, int Dn, double AsmeMm, double? IsoMm);
}
