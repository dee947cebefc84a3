namespace SacrificialTape.Surfaces;

/// <summary>
/// Flanges of ASME B16.5 class 150, in mm, as read in two published tables that agree within 1 mm. Where they differ, the
/// first is held: NPS 3 outside 190 or 191, NPS 8 thickness 28.6 or 28.4, NPS 24 thickness 47.7 or 47.8.
/// </summary>
internal static class FlangeTable
{
    /// <summary>Height of the raised face: recalled, check before use.</summary>
    internal const double RaisedFaceMm = 1.6;

    private static readonly Row[] Table =
    [
        new("1/2", 89, 11.2, 60.5, 4, 15, 35),
        new("2", 152, 19.1, 120.5, 4, 19, 92),
        new("3", 190, 23.9, 152.5, 4, 19, 127),
        new("4", 229, 23.9, 190.5, 8, 19, 157),
        new("6", 279, 25.4, 241.5, 8, 22, 216),
        new("8", 343, 28.6, 298.5, 8, 22, 270),
        new("12", 483, 31.8, 432, 12, 25, 381),
        new("24", 813, 47.7, 749.5, 20, 35, 692),
    ];

    internal static ReadOnlySpan<Row> Rows => Table;

    internal readonly record struct Row(
        string Nps, double OutsideMm, double ThicknessMm, double BoltCircleMm, int Holes, double HoleMm, double FaceMm);
}
