using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>Years until zinc is used up, row by row: see <see cref="LinearLoss"/> and <see cref="PowerLawLoss"/>.</summary>
/// <remarks>
/// Zinc that nothing corrodes lasts for ever: its row is positive infinity. A row is NaN where an input is NaN, infinite or
/// outside its range. Columns must be as long as the destination and apart from it. Nothing is allocated.
/// </remarks>
public static class LifeRows
{
    /// <summary>Years at a constant rate; bit for bit the scalar form.</summary>
    /// <param name="zincUm">Zinc to be used up, um; at least 0.</param>
    /// <param name="firstYearUmPerYear">Rate, um/a; at least 0.</param>
    /// <param name="lifeYears">Where the years go, of 365 d.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void Linear(Column zincUm, Column firstYearUmPerYear, Span<double> lifeYears)
    {
        zincUm.Check(lifeYears, nameof(zincUm));
        firstYearUmPerYear.Check(lifeYears, nameof(firstYearUmPerYear));
        RowLoop.Run(new LinearLives(zincUm, firstYearUmPerYear, lifeYears), lifeYears.Length);
    }

    /// <summary>
    /// Years by the power law with its tangent after 20 years. From the scalar form a row differs by at most 4 + 2 |ln t| units in
    /// the last place.
    /// </summary>
    /// <param name="zincUm">Zinc to be used up, um; at least 0.</param>
    /// <param name="firstYearUmPerYear">First-year rate, um/a; at least 0.</param>
    /// <param name="timeExponent">The exponent b, more than 0, at most 1.</param>
    /// <param name="lifeYears">Where the years go, of 365 d.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void PowerLaw(Column zincUm, Column firstYearUmPerYear, Column timeExponent, Span<double> lifeYears)
    {
        zincUm.Check(lifeYears, nameof(zincUm));
        firstYearUmPerYear.Check(lifeYears, nameof(firstYearUmPerYear));
        timeExponent.Check(lifeYears, nameof(timeExponent));
        RowLoop.Run(new PowerLives(zincUm, firstYearUmPerYear, new LawColumn(timeExponent), lifeYears), lifeYears.Length);
    }

    private readonly ref struct LinearLives(Column zinc, Column rates, Span<double> years) : IRowFormula<LinearLives>
    {
        private readonly Column zinc = zinc;
        private readonly Column rates = rates;
        private readonly Span<double> years = years;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in LinearLives batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess => TAccess.Store(
                LossKernel.LinearYears(batch.zinc.At<TLanes, TAccess>(row), batch.rates.At<TLanes, TAccess>(row)),
                ref MemoryMarshal.GetReference(batch.years),
                row);
    }

    private readonly ref struct PowerLives(Column zinc, Column rates, LawColumn law, Span<double> years) : IRowFormula<PowerLives>
    {
        private readonly Column zinc = zinc;
        private readonly Column rates = rates;
        private readonly LawColumn law = law;
        private readonly Span<double> years = years;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in PowerLives batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess => TAccess.Store(
                LossKernel.PowerYears(batch.zinc.At<TLanes, TAccess>(row), batch.rates.At<TLanes, TAccess>(row), batch.law.At<TLanes, TAccess>(row)),
                ref MemoryMarshal.GetReference(batch.years),
                row);
    }
}
