using SacrificialTape.Provenance;

namespace SacrificialTape.SiteConditions;

/// <summary>What the cleaning grades mean, and which names of another body come nearest.</summary>
public static class CleaningGrades
{
    /// <summary>The method that a grade belongs to.</summary>
    /// <param name="grade">The grade.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a grade known here.</exception>
    public static CleaningMethod MethodOf(CleaningGrade grade) => grade switch
    {
        CleaningGrade.St2 or CleaningGrade.St3 => CleaningMethod.Tool,
        CleaningGrade.Sa1 or CleaningGrade.Sa2 or CleaningGrade.Sa2Half or CleaningGrade.Sa3 => CleaningMethod.Blast,
        CleaningGrade.Wa1 or CleaningGrade.Wa2 or CleaningGrade.Wa2Half => CleaningMethod.WaterJet,
        _ => throw Unknown(grade),
    };

    /// <summary>The grade as the standard writes it, for instance <c>Sa 2 1/2</c>.</summary>
    /// <param name="grade">The grade.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a grade known here.</exception>
    public static string NameOf(CleaningGrade grade) => grade switch
    {
        CleaningGrade.St2 => "St 2",
        CleaningGrade.St3 => "St 3",
        CleaningGrade.Sa1 => "Sa 1",
        CleaningGrade.Sa2 => "Sa 2",
        CleaningGrade.Sa2Half => "Sa 2 1/2",
        CleaningGrade.Sa3 => "Sa 3",
        CleaningGrade.Wa1 => "Wa 1",
        CleaningGrade.Wa2 => "Wa 2",
        CleaningGrade.Wa2Half => "Wa 2 1/2",
        _ => throw Unknown(grade),
    };

    /// <summary>The nearest grade of SSPC and NACE: nearest only, for those are written definitions and ISO's are photographs.</summary>
    /// <param name="grade">The grade.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a grade known here.</exception>
    public static string NearestSspcName(CleaningGrade grade) => grade switch
    {
        CleaningGrade.St2 => "SP 2",
        CleaningGrade.St3 => "SP 3",
        CleaningGrade.Sa1 => "SP 7 / NACE No. 4",
        CleaningGrade.Sa2 => "SP 6 / NACE No. 3",
        CleaningGrade.Sa2Half => "SP 10 / NACE No. 2",
        CleaningGrade.Sa3 => "SP 5 / NACE No. 1",
        CleaningGrade.Wa1 => "WJ-4",
        CleaningGrade.Wa2 => "WJ-3",
        CleaningGrade.Wa2Half => "WJ-2",
        _ => throw Unknown(grade),
    };

    /// <summary>On what the nearest name rests.</summary>
    /// <param name="grade">The grade.</param>
    public static Basis BasisOf(CleaningGrade grade) => grade == CleaningGrade.Sa3 ? SiteSources.NearestNameRead : SiteSources.NearestNameRecalled;

    /// <summary>The number in the name of a grade: 2.5 for Sa 2 1/2.</summary>
    internal static double NumberOf(CleaningGrade grade) => grade switch
    {
        CleaningGrade.Sa1 or CleaningGrade.Wa1 => 1,
        CleaningGrade.St2 or CleaningGrade.Sa2 or CleaningGrade.Wa2 => 2,
        CleaningGrade.Sa2Half or CleaningGrade.Wa2Half => 2.5,
        CleaningGrade.St3 or CleaningGrade.Sa3 => 3,
        _ => throw Unknown(grade),
    };

    private static ArgumentOutOfRangeException Unknown(CleaningGrade grade) => new(nameof(grade), grade, "Not a cleaning grade known here.");
}
