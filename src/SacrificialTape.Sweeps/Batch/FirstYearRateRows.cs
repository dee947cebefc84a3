using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Exposure;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>First-year rates of zinc from the air of a site, row by row: see <see cref="DoseResponse"/>.</summary>
/// <remarks>
/// Recalled, check before use, as is the scalar form. Each row is within 16 units in the last place of the scalar form.
/// Columns must be as long as the destination and apart from it. Nothing is allocated.
/// </remarks>
public static class FirstYearRateRows
{
    /// <summary>First-year rate of zinc, um/a.</summary>
    /// <param name="temperatureDegC">Annual mean temperature, degC.</param>
    /// <param name="humidityPercent">Annual mean relative humidity, %.</param>
    /// <param name="sulfurDioxideMgPerM2Day">Deposition of sulfur dioxide, mg/(m2.d).</param>
    /// <param name="chlorideMgPerM2Day">Deposition of chloride, mg/(m2.d).</param>
    /// <param name="rateUmPerYear">Where the rates go, um/a; NaN in a row with an input that is NaN or outside the data behind the function.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void Zinc(
        Column temperatureDegC,
        Column humidityPercent,
        Column sulfurDioxideMgPerM2Day,
        Column chlorideMgPerM2Day,
        Span<double> rateUmPerYear) =>
        Zinc(temperatureDegC, humidityPercent, sulfurDioxideMgPerM2Day, chlorideMgPerM2Day, BeyondFit.Refuse, rateUmPerYear);

    /// <summary>First-year rate of zinc, um/a, also beyond the data behind the function where that is asked for.</summary>
    /// <param name="temperatureDegC">Annual mean temperature, degC.</param>
    /// <param name="humidityPercent">Annual mean relative humidity, %.</param>
    /// <param name="sulfurDioxideMgPerM2Day">Deposition of sulfur dioxide, mg/(m2.d).</param>
    /// <param name="chlorideMgPerM2Day">Deposition of chloride, mg/(m2.d).</param>
    /// <param name="beyond">The range: the data behind the function, or with AcceptWithFinding all air that can be described.</param>
    /// <param name="rateUmPerYear">Where the rates go, um/a; NaN in a row with an input that is NaN or outside its range.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such choice of range.</exception>
    public static void Zinc(
        Column temperatureDegC,
        Column humidityPercent,
        Column sulfurDioxideMgPerM2Day,
        Column chlorideMgPerM2Day,
        BeyondFit beyond,
        Span<double> rateUmPerYear)
    {
        if (!Enum.IsDefined(beyond))
        {
            throw new ArgumentOutOfRangeException(nameof(beyond), beyond, "Refuse or AcceptWithFinding.");
        }

        temperatureDegC.Check(rateUmPerYear, nameof(temperatureDegC));
        humidityPercent.Check(rateUmPerYear, nameof(humidityPercent));
        sulfurDioxideMgPerM2Day.Check(rateUmPerYear, nameof(sulfurDioxideMgPerM2Day));
        chlorideMgPerM2Day.Check(rateUmPerYear, nameof(chlorideMgPerM2Day));
        DoseRangeTerms range = beyond == BeyondFit.Refuse ? DoseRangeTerms.Fit : DoseRangeTerms.Air;
        RowLoop.Run(
            new ZincRates(temperatureDegC, humidityPercent, sulfurDioxideMgPerM2Day, chlorideMgPerM2Day, rateUmPerYear, range),
            rateUmPerYear.Length);
    }

    /// <summary>A batch of rates; internal, so that a test may run it at every width.</summary>
    internal readonly ref struct ZincRates(
        Column celsius, Column percent, Column sulfur, Column chloride, Span<double> rates, DoseRangeTerms range)
        : IRowFormula<ZincRates>
    {
        private readonly Column celsius = celsius;
        private readonly Column percent = percent;
        private readonly Column sulfur = sulfur;
        private readonly Column chloride = chloride;
        private readonly Span<double> rates = rates;
        private readonly DoseRangeTerms range = range;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in ZincRates batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess
        {
            TLanes rate = ExposureKernel.ZincRate(
                batch.celsius.At<TLanes, TAccess>(row),
                batch.percent.At<TLanes, TAccess>(row),
                batch.sulfur.At<TLanes, TAccess>(row),
                batch.chloride.At<TLanes, TAccess>(row),
                batch.range);
            TAccess.Store(rate, ref MemoryMarshal.GetReference(batch.rates), row);
        }
    }
}
