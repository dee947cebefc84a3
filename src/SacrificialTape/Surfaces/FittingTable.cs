namespace SacrificialTape.Surfaces;

/// <summary>
/// Butt-weld fittings by ASME B16.9, in mm: equal tees as read in a published table of them, the rest recalled, check
/// before use. A missing value is one that is not known here, not one that the standard lacks.
/// </summary>
internal static class FittingTable
{
    private static readonly Row[] Table =
    [
        new("1/2", null, 25, 25, 25),
        new("1", 51, 38, 38, 38),
        new("2", 76, 64, 64, 38),
        new("3", 89, 86, 86, 51),
        new("4", 102, 105, 105, 64),
        new("6", 140, 143, 143, 89),
        new("8", 152, 178, 178, 102),
        new("10", 178, 216, 216, 127),
        new("12", 203, 254, 254, 152),
        new("16", 356, 305, 305, 178),
        new("24", 508, 432, 432, 267),
        new("48", null, 889, 838, null),
    ];

    private static readonly Reduced[] ReducedTable =
    [
        new("2", "1", 51),
        new("3", "2", 76),
        new("4", "2", 89), new("4", "3", 98),
        new("6", "3", 124), new("6", "4", 130),
        new("8", "4", 156), new("8", "6", 168),
        new("10", "6", 194), new("10", "8", 203),
        new("12", "8", 229), new("12", "10", 241),
    ];

    internal static ReadOnlySpan<Row> Rows => Table;

    internal static ReadOnlySpan<Reduced> ReducedRows => ReducedTable;

    /// <summary>Length of reducer by its large end; run and outlet of an equal tee; length of cap.</summary>
    internal readonly record struct Row(string Nps, double? ReducerMm, double? RunMm, double? OutletMm, double? CapMm);

    /// <summary>Outlet of a reducing tee.</summary>
    internal readonly record struct Reduced(string Run, string Branch, double OutletMm);
}
