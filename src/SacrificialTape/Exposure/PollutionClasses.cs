using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Exposure;

/// <summary>Classes of pollution and wetness of a site, by a named edition of ISO 9223; upper bounds are included.</summary>
/// <remarks>
/// The editions of 1992 and 2012 disagree on sulfur dioxide: 8 mg/(m2.d) is P0 by the one and P1 by the other. Say which
/// one a class is meant by. The edition of 1992 prints whole numbers (P1 from 11 to 35); a deposition between two rows
/// belongs to the higher one here.
/// </remarks>
public static class PollutionClasses
{
    private static readonly double[] Sulfur2012 = [4, 24, 80, 200];
    private static readonly double[] Sulfur1992 = [10, 35, 80, 200];
    private static readonly double[] Concentration2012 = [5, 30, 90, 250];
    private static readonly double[] ChlorideBounds = [3, 60, 300, 1500];
    private static readonly double[] WetHours = [10, 250, 2500, 5500];

    /// <summary>Deposition of sulfur dioxide from its concentration: 0.8 mg/(m2.d) for each ug/m3 (recalled, check before use).</summary>
    /// <param name="concentration">Annual mean concentration, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is negative.</exception>
    [BasisOf(typeof(ExposureFormulas), nameof(ExposureFormulas.SulfurDeposition))]
    public static DepositionRate SulfurDioxideDeposition(MassConcentration concentration) =>
        DepositionRate.FromMilligramsPerSquareMeterDay(ExposureKernel.SulfurDeposition(CheckedConcentration(concentration)));

    /// <summary>The class of a measured deposition of sulfur dioxide.</summary>
    /// <param name="deposition">Annual mean deposition.</param>
    /// <param name="edition">The edition whose class is meant.</param>
    /// <returns>Null above P3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such edition.</exception>
    public static SulfurDioxideClass? SulfurDioxide(DepositionRate deposition, Iso9223Edition edition) => (SulfurDioxideClass?)Find(
        Checked(edition) == Iso9223Edition.Of2012 ? Sulfur2012 : Sulfur1992, deposition.MilligramsPerSquareMeterDay);

    /// <summary>The class of a measured concentration of sulfur dioxide.</summary>
    /// <remarks>
    /// Concentration and deposition have columns of their own: 90 ug/m3 ends P2, while 0.8 times that is 72 of the
    /// 80 mg/(m2.d) that end it. Classify what was measured. All bounds are recalled, check before use.
    /// </remarks>
    /// <param name="concentration">Annual mean concentration, zero or more.</param>
    /// <param name="edition">The edition whose class is meant; of 1992 no column of concentrations is held here.</param>
    /// <returns>Null above P3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The concentration is negative, or the edition is not that of 2012.</exception>
    public static SulfurDioxideClass? SulfurDioxide(MassConcentration concentration, Iso9223Edition edition)
    {
        double value = CheckedConcentration(concentration);
        return edition == Iso9223Edition.Of2012
            ? (SulfurDioxideClass?)Find(Concentration2012, value)
            : throw new ArgumentOutOfRangeException(
                nameof(edition), edition, "Concentrations are classed by the edition of 2012 only; turn them into depositions for another.");
    }

    /// <summary>The class of a measured deposition of chloride; both editions have the same bounds (that of 2012 recalled).</summary>
    /// <param name="deposition">Annual mean deposition.</param>
    /// <param name="edition">The edition whose class is meant.</param>
    /// <returns>Null above S3.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such edition.</exception>
    public static ChlorideClass? Chloride(DepositionRate deposition, Iso9223Edition edition)
    {
        _ = Checked(edition);
        return (ChlorideClass?)Find(ChlorideBounds, deposition.MilligramsPerSquareMeterDay);
    }

    /// <summary>The class of the time a surface is wet; both editions have the same bounds (that of 2012 recalled).</summary>
    /// <param name="wetInAYear">Time wet in a year of 365 d, at most the year.</param>
    /// <param name="edition">The edition whose class is meant.</param>
    /// <exception cref="ArgumentOutOfRangeException">More than a year, a negative time, or no such edition.</exception>
    public static WetnessClass Wetness(Duration wetInAYear, Iso9223Edition edition)
    {
        _ = Checked(edition);
        double hours = AcceptedRange.Between(0, UnitConversions.HoursPerYear, "h")
            .Check(UnitConversions.Hours(wetInAYear), nameof(wetInAYear));
        return (WetnessClass)((Find(WetHours, hours) ?? WetHours.Length) + 1);
    }

    /// <summary>On what the class of a deposition of sulfur dioxide rests.</summary>
    /// <param name="found">The class.</param>
    /// <param name="edition">The edition.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such edition.</exception>
    public static Basis BasisOf(SulfurDioxideClass found, Iso9223Edition edition) => Checked(edition) == Iso9223Edition.Of1992
        ? ExposureSources.Classes1992
        : found <= SulfurDioxideClass.P1 ? ExposureSources.SulfurDioxide2012 : ExposureSources.SulfurDioxide2012Upper;

    /// <summary>On what the class of a deposition of chloride rests.</summary>
    /// <param name="edition">The edition.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such edition.</exception>
    public static Basis BasisOfChloride(Iso9223Edition edition) =>
        Checked(edition) == Iso9223Edition.Of1992 ? ExposureSources.Classes1992 : ExposureSources.Classes2012;

    /// <summary>On what the class of a wetness rests.</summary>
    /// <param name="found">The class.</param>
    /// <param name="edition">The edition.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such edition.</exception>
    public static Basis BasisOf(WetnessClass found, Iso9223Edition edition) => Checked(edition) == Iso9223Edition.Of2012
        ? ExposureSources.Classes2012
        : found <= WetnessClass.Tau3 ? ExposureSources.Classes1992 : ExposureSources.WetnessUpper;

    private static int? Find(double[] upper, double value)
    {
        int at = Array.FindIndex(upper, bound => WithAllowance.AtMost(value, bound));
        return at < 0 ? null : at;
    }

    private static Iso9223Edition Checked(Iso9223Edition edition) => Enum.IsDefined(edition)
        ? edition
        : throw new ArgumentOutOfRangeException(nameof(edition), edition, "Name the edition: of 1992 or of 2012.");

    private static double CheckedConcentration(MassConcentration concentration) => AcceptedRange
        .AtLeast(0, "ug/m3").Check(UnitConversions.MicrogramsPerCubicMeter(concentration), nameof(concentration));
}
