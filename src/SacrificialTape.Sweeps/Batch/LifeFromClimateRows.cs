using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>
/// Years of a foil from the air of its site in one pass, row by row: the first-year rate of <see cref="DoseResponse"/>, then
/// <see cref="PowerLawLoss"/>.
/// </summary>
/// <remarks>
/// The function and the exponents of the standard are recalled, check before use. A row has the bits of
/// <see cref="FirstYearRateRows"/> followed by <see cref="LifeRows.PowerLaw"/>, without the rates going through memory. Columns must
/// be as long as the destination and apart from it. Nothing is allocated.
/// </remarks>
public static class LifeFromClimateRows
{
    /// <summary>
    /// Years until a foil is used up. From the typed form a row differs by at most (20 + 2 |ln t|)/b units in the last place.
    /// </summary>
    /// <param name="temperatureDegC">Annual mean temperature, degC.</param>
    /// <param name="humidityPercent">Annual mean relative humidity, %.</param>
    /// <param name="sulfurDioxideMgPerM2Day">Deposition of sulfur dioxide, mg/(m2.d).</param>
    /// <param name="chlorideMgPerM2Day">Deposition of chloride, mg/(m2.d).</param>
    /// <param name="zincUm">Thickness of zinc to be used up, um; at least 0.</param>
    /// <param name="timeExponent">The exponent b, more than 0, at most 1.</param>
    /// <param name="lifeYears">Where the years go, of 365 d; NaN in a row with an input that is NaN or outside its range.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void Zinc(
        Column temperatureDegC,
        Column humidityPercent,
        Column sulfurDioxideMgPerM2Day,
        Column chlorideMgPerM2Day,
        Column zincUm,
        Column timeExponent,
        Span<double> lifeYears) =>
        Zinc(
            temperatureDegC,
            humidityPercent,
            sulfurDioxideMgPerM2Day,
            chlorideMgPerM2Day,
            zincUm,
            timeExponent,
            BeyondFit.Refuse,
            lifeYears);

    /// <summary>Years until a foil is used up, also beyond the data behind the function where that is asked for.</summary>
    /// <param name="temperatureDegC">Annual mean temperature, degC.</param>
    /// <param name="humidityPercent">Annual mean relative humidity, %.</param>
    /// <param name="sulfurDioxideMgPerM2Day">Deposition of sulfur dioxide, mg/(m2.d).</param>
    /// <param name="chlorideMgPerM2Day">Deposition of chloride, mg/(m2.d).</param>
    /// <param name="zincUm">Thickness of zinc to be used up, um; at least 0.</param>
    /// <param name="timeExponent">The exponent b, more than 0, at most 1.</param>
    /// <param name="beyond">The range of the air: the data behind the function, or with AcceptWithFinding all that can be described.</param>
    /// <param name="lifeYears">Where the years go, of 365 d; NaN in a row with an input that is NaN or outside its range.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such choice of range.</exception>
    public static void Zinc(
        Column temperatureDegC,
        Column humidityPercent,
        Column sulfurDioxideMgPerM2Day,
        Column chlorideMgPerM2Day,
        Column zincUm,
        Column timeExponent,
        BeyondFit beyond,
        Span<double> lifeYears)
    {
        if (!Enum.IsDefined(beyond))
        {
            throw new ArgumentOutOfRangeException(nameof(beyond), beyond, "Refuse or AcceptWithFinding.");
        }

        temperatureDegC.Check(lifeYears, nameof(temperatureDegC));
        humidityPercent.Check(lifeYears, nameof(humidityPercent));
        sulfurDioxideMgPerM2Day.Check(lifeYears, nameof(sulfurDioxideMgPerM2Day));
        chlorideMgPerM2Day.Check(lifeYears, nameof(chlorideMgPerM2Day));
        zincUm.Check(lifeYears, nameof(zincUm));
        timeExponent.Check(lifeYears, nameof(timeExponent));
        if (temperatureDegC.IsSingle && humidityPercent.IsSingle && sulfurDioxideMgPerM2Day.IsSingle && chlorideMgPerM2Day.IsSingle)
        {
            // One air for all rows: its rate is worked out once, by the same vector code.
            Span<double> rate = stackalloc double[1];
            FirstYearRateRows.Zinc(temperatureDegC, humidityPercent, sulfurDioxideMgPerM2Day, chlorideMgPerM2Day, beyond, rate);
            LifeRows.PowerLaw(zincUm, rate[0], timeExponent, lifeYears);
            return;
        }

        DoseRangeTerms range = beyond == BeyondFit.Refuse ? DoseRangeTerms.Fit : DoseRangeTerms.Air;
        RowLoop.Run(
            new ZincLives(
                temperatureDegC,
                humidityPercent,
                sulfurDioxideMgPerM2Day,
                chlorideMgPerM2Day,
                zincUm,
                new LawColumn(timeExponent),
                lifeYears,
                range),
            lifeYears.Length);
    }

    /// <summary>A batch of lives; internal, so that a test may run it at every width.</summary>
    internal readonly ref struct ZincLives(
        Column celsius, Column percent, Column sulfur, Column chloride, Column zinc, LawColumn law, Span<double> years, DoseRangeTerms range)
        : IRowFormula<ZincLives>
    {
        private readonly Column celsius = celsius;
        private readonly Column percent = percent;
        private readonly Column sulfur = sulfur;
        private readonly Column chloride = chloride;
        private readonly Column zinc = zinc;
        private readonly LawColumn law = law;
        private readonly Span<double> years = years;
        private readonly DoseRangeTerms range = range;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in ZincLives batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess
        {
            TLanes rate = ExposureKernel.ZincRate(
                batch.celsius.At<TLanes, TAccess>(row),
                batch.percent.At<TLanes, TAccess>(row),
                batch.sulfur.At<TLanes, TAccess>(row),
                batch.chloride.At<TLanes, TAccess>(row),
                batch.range);
            TLanes years = LossKernel.PowerYears(batch.zinc.At<TLanes, TAccess>(row), rate, batch.law.At<TLanes, TAccess>(row));
            TAccess.Store(years, ref MemoryMarshal.GetReference(batch.years), row);
        }
    }
}
