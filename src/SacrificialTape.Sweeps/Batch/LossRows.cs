using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>Zinc lost after a time, row by row: see <see cref="LinearLoss"/> and <see cref="PowerLawLoss"/>.</summary>
/// <remarks>
/// A row is NaN where an input is NaN, infinite or outside its range. Columns must be as long as the destination and apart
/// from it. Nothing is allocated.
/// </remarks>
public static class LossRows
{
    /// <summary>Loss in proportion to time, um; bit for bit the scalar form.</summary>
    /// <param name="firstYearUmPerYear">First-year rate, um/a; at least 0.</param>
    /// <param name="timeYears">Time, years of 365 d; at least 0.</param>
    /// <param name="lossUm">Where the losses go, um.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void Linear(Column firstYearUmPerYear, Column timeYears, Span<double> lossUm)
    {
        firstYearUmPerYear.Check(lossUm, nameof(firstYearUmPerYear));
        timeYears.Check(lossUm, nameof(timeYears));
        RowLoop.Run(new LinearLosses(firstYearUmPerYear, timeYears, lossUm), lossUm.Length);
    }

    /// <summary>
    /// Loss by the power law with its tangent after 20 years, um. From the scalar form a row differs by at most 4 + 2 |ln t| units
    /// in the last place.
    /// </summary>
    /// <param name="firstYearUmPerYear">First-year rate, um/a; at least 0.</param>
    /// <param name="timeYears">Time, years of 365 d; at least 0.</param>
    /// <param name="timeExponent">The exponent b, more than 0, at most 1.</param>
    /// <param name="lossUm">Where the losses go, um.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void PowerLaw(Column firstYearUmPerYear, Column timeYears, Column timeExponent, Span<double> lossUm)
    {
        firstYearUmPerYear.Check(lossUm, nameof(firstYearUmPerYear));
        timeYears.Check(lossUm, nameof(timeYears));
        timeExponent.Check(lossUm, nameof(timeExponent));
        RowLoop.Run(new PowerLosses(firstYearUmPerYear, timeYears, new LawColumn(timeExponent), lossUm), lossUm.Length);
    }

    private readonly ref struct LinearLosses(Column rates, Column years, Span<double> losses) : IRowFormula<LinearLosses>
    {
        private readonly Column rates = rates;
        private readonly Column years = years;
        private readonly Span<double> losses = losses;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in LinearLosses batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess => TAccess.Store(
                LossKernel.LinearLossUm(batch.rates.At<TLanes, TAccess>(row), batch.years.At<TLanes, TAccess>(row)),
                ref MemoryMarshal.GetReference(batch.losses),
                row);
    }

    private readonly ref struct PowerLosses(Column rates, Column years, LawColumn law, Span<double> losses) : IRowFormula<PowerLosses>
    {
        private readonly Column rates = rates;
        private readonly Column years = years;
        private readonly LawColumn law = law;
        private readonly Span<double> losses = losses;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in PowerLosses batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess => TAccess.Store(
                LossKernel.PowerLossUm(batch.rates.At<TLanes, TAccess>(row), batch.years.At<TLanes, TAccess>(row), batch.law.At<TLanes, TAccess>(row)),
                ref MemoryMarshal.GetReference(batch.losses),
                row);
    }
}
