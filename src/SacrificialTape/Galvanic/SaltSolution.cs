using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>Conductivity of salt solutions at 20 degC, from a printed table, straight lines between its entries.</summary>
/// <remarks>
/// From 0.5 mass % to 25 (sodium), 30 (magnesium) or 40 % (calcium chloride); outside it throws. The rows of magnesium
/// and calcium chloride were read, that of sodium chloride is recalled. About 2 % more for each kelvin (recalled).
/// </remarks>
public static class SaltSolution
{
    // Molar conductivity of NaCl at 25 degC, S.cm2/mol, by strength in mol/l (recalled).
    private static readonly double[] Molar = [0.0005, 0.001, 0.005, 0.01, 0.02, 0.05, 0.1];
    private static readonly double[] MolarConductivity = [124.44, 123.68, 120.59, 118.45, 115.70, 111.01, 106.69];

    private static readonly double[] Percent = [0.5, 1, 2, 5, 10, 15, 20, 25, 30, 40];

    /// <summary>On what the row of a salt rests.</summary>
    /// <param name="salt">The salt.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a salt of the table.</exception>
    public static Basis BasisOf(Salt salt) => salt switch
    {
        Salt.SodiumChloride => GalvanicSources.SodiumChloride,
        Salt.MagnesiumChloride or Salt.CalciumChloride => GalvanicSources.SaltTable,
        _ => throw Unknown(salt),
    };

    /// <summary>Conductivity at a strength.</summary>
    /// <param name="salt">The salt.</param>
    /// <param name="massPercent">Mass of salt over mass of solution, in per cent.</param>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside the table.</exception>
    [BasisOf(typeof(GalvanicSources), nameof(GalvanicSources.SodiumChloride))]
    [BasisOf(typeof(GalvanicSources), nameof(GalvanicSources.SaltTable))]
    public static ElectricConductivity Conductivity(Salt salt, double massPercent)
    {
        ReadOnlySpan<double> row = MilliSiemensPerCm(salt);
        AcceptedRange.Between(Percent[0], Percent[row.Length - 1], "mass %").Check(massPercent);
        int i = 1;
        while (Percent[i] < massPercent)
        {
            i++;
        }

        double share = (massPercent - Percent[i - 1]) / (Percent[i] - Percent[i - 1]);
        return ElectricConductivity.FromSiemensPerMeter((row[i - 1] + (share * (row[i] - row[i - 1]))) / 10);
    }

    /// <summary>Conductivity of dilute sodium chloride at 25 degC, from 0.0005 to 0.1 mol/l (recalled, check before use).</summary>
    /// <param name="strength">Amount of salt in a volume of solution.</param>
    /// <exception cref="ArgumentOutOfRangeException">The strength is outside the table.</exception>
    [BasisOf(typeof(GalvanicSources), nameof(GalvanicSources.SodiumChlorideMolar))]
    public static ElectricConductivity DiluteSodiumChloride(Molarity strength)
    {
        double molar = AcceptedRange.Between(Molar[0], Molar[^1], "mol/l").Check(UnitConversions.MolesPerLiter(strength), nameof(strength));
        int i = 1;
        while (Molar[i] < molar)
        {
            i++;
        }

        double low = Math.Sqrt(Molar[i - 1]);
        double share = (Math.Sqrt(molar) - low) / (Math.Sqrt(Molar[i]) - low);
        double lambda = MolarConductivity[i - 1] + (share * (MolarConductivity[i] - MolarConductivity[i - 1]));
        return ElectricConductivity.FromSiemensPerMeter(lambda * molar / 10);
    }

    private static ReadOnlySpan<double> MilliSiemensPerCm(Salt salt) => salt switch
    {
        Salt.SodiumChloride => [8.2, 16.0, 30.2, 70.1, 126, 171, 204, 222],
        Salt.MagnesiumChloride => [8.6, 16.6, 31.2, 66.9, 108, 129, 134, 122, 98],
        Salt.CalciumChloride => [8.1, 15.7, 29.4, 67.0, 117, 157, 177, 183, 172, 106],
        _ => throw Unknown(salt),
    };

    private static ArgumentOutOfRangeException Unknown(Salt salt) => new(nameof(salt), salt, "Not a salt of the table.");
}
