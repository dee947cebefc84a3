using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>Years of one layer of zinc beside bare steel, row by row: see <see cref="HolidayLife"/>.</summary>
/// <remarks>
/// Zinc from which nothing is taken lasts for ever: its row is positive infinity. A row is NaN where a value is NaN or outside its
/// range. Columns must be as long as the destination and apart from it. Nothing is allocated.
/// </remarks>
public static class HolidayLifeRows
{
    /// <summary>Years at a practical capacity, which contains the zinc's own corrosion. Bit for bit the scalar form.</summary>
    /// <param name="foilUm">Thickness of the foil, um; 5 to 2000.</param>
    /// <param name="usable">Share of the foil that may be used up; more than 0, at most 1.</param>
    /// <param name="barePerZinc">Area of bare steel for each area of zinc that feeds it (<see cref="ZincFeed"/>); at least 0.</param>
    /// <param name="demandAmperesPerM2">What bare steel draws, A/m2; at least 0.</param>
    /// <param name="ampereHoursPerKg">Practical capacity, A.h/kg; more than 0, at most the theoretical one of zinc.</param>
    /// <param name="kilogramsPerM3">Density of the foil, kg/m3; 6000 to 8000.</param>
    /// <param name="lifeYears">Where the years go, of 365 d.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void AtPracticalCapacity(
        Column foilUm,
        Column usable,
        Column barePerZinc,
        Column demandAmperesPerM2,
        Column ampereHoursPerKg,
        Column kilogramsPerM3,
        Span<double> lifeYears)
    {
        foilUm.Check(lifeYears, nameof(foilUm));
        usable.Check(lifeYears, nameof(usable));
        barePerZinc.Check(lifeYears, nameof(barePerZinc));
        demandAmperesPerM2.Check(lifeYears, nameof(demandAmperesPerM2));
        ampereHoursPerKg.Check(lifeYears, nameof(ampereHoursPerKg));
        kilogramsPerM3.Check(lifeYears, nameof(kilogramsPerM3));
        RowLoop.Run(
            new Practical(foilUm, usable, barePerZinc, demandAmperesPerM2, ampereHoursPerKg, kilogramsPerM3, lifeYears), lifeYears.Length);
    }

    /// <summary>
    /// Years with own corrosion by the power law and the demand counted apart, at the theoretical capacity. From the scalar form,
    /// which seeks its root to a width of 1e-14, a row differs by at most 200 units in the last place.
    /// </summary>
    /// <param name="foilUm">Thickness of the foil, um; 5 to 2000.</param>
    /// <param name="usable">Share of the foil that may be used up; more than 0, at most 1.</param>
    /// <param name="barePerZinc">Area of bare steel for each area of zinc that feeds it (<see cref="ZincFeed"/>); at least 0.</param>
    /// <param name="demandAmperesPerM2">What bare steel draws, A/m2; at least 0.</param>
    /// <param name="firstYearUmPerYear">First-year rate of own corrosion, um/a; at least 0.</param>
    /// <param name="timeExponent">The exponent b, more than 0, at most 1: 1 is the linear law.</param>
    /// <param name="kilogramsPerM3">Density of the foil, kg/m3; 6000 to 8000.</param>
    /// <param name="lifeYears">Where the years go, of 365 d.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void WithOwnCorrosion(
        Column foilUm,
        Column usable,
        Column barePerZinc,
        Column demandAmperesPerM2,
        Column firstYearUmPerYear,
        Column timeExponent,
        Column kilogramsPerM3,
        Span<double> lifeYears)
    {
        foilUm.Check(lifeYears, nameof(foilUm));
        usable.Check(lifeYears, nameof(usable));
        barePerZinc.Check(lifeYears, nameof(barePerZinc));
        demandAmperesPerM2.Check(lifeYears, nameof(demandAmperesPerM2));
        firstYearUmPerYear.Check(lifeYears, nameof(firstYearUmPerYear));
        timeExponent.Check(lifeYears, nameof(timeExponent));
        kilogramsPerM3.Check(lifeYears, nameof(kilogramsPerM3));
        RowLoop.Run(
            new Both(
                foilUm,
                usable,
                barePerZinc,
                demandAmperesPerM2,
                firstYearUmPerYear,
                new LawColumn(timeExponent),
                kilogramsPerM3,
                GalvanicKernel.ZincCapacity(),
                lifeYears),
            lifeYears.Length);
    }

    private readonly ref struct Practical(
        Column foil, Column usable, Column feed, Column demand, Column capacity, Column density, Span<double> years) : IRowFormula<Practical>
    {
        private readonly Column foil = foil;
        private readonly Column usable = usable;
        private readonly Column feed = feed;
        private readonly Column demand = demand;
        private readonly Column capacity = capacity;
        private readonly Column density = density;
        private readonly Span<double> years = years;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in Practical batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess
        {
            TLanes zinc = HolidayKernel.Zinc(batch.usable.At<TLanes, TAccess>(row), batch.foil.At<TLanes, TAccess>(row));
            TLanes demand = HolidayKernel.DemandRate(
                batch.feed.At<TLanes, TAccess>(row),
                batch.demand.At<TLanes, TAccess>(row),
                batch.capacity.At<TLanes, TAccess>(row),
                batch.density.At<TLanes, TAccess>(row));

            // Some zinc over no demand is endless by the division itself.
            TAccess.Store(zinc / demand, ref MemoryMarshal.GetReference(batch.years), row);
        }
    }

    /// <summary>A batch of lives; internal, so that a test may run it at every width.</summary>
    internal readonly ref struct Both(
        Column foil,
        Column usable,
        Column feed,
        Column demand,
        Column rates,
        LawColumn law,
        Column density,
        double capacity,
        Span<double> years) : IRowFormula<Both>
    {
        private readonly Column foil = foil;
        private readonly Column usable = usable;
        private readonly Column feed = feed;
        private readonly Column demand = demand;
        private readonly Column rates = rates;
        private readonly LawColumn law = law;
        private readonly Column density = density;
        private readonly double capacity = capacity;
        private readonly Span<double> years = years;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public static void Work<TLanes, TAccess>(scoped in Both batch, nuint row)
            where TLanes : struct, ILanes<TLanes>
            where TAccess : struct, IRowAccess
        {
            TLanes zinc = HolidayKernel.Zinc(batch.usable.At<TLanes, TAccess>(row), batch.foil.At<TLanes, TAccess>(row));
            TLanes demand = HolidayKernel.DemandRate(
                batch.feed.At<TLanes, TAccess>(row),
                batch.demand.At<TLanes, TAccess>(row),
                batch.capacity,
                batch.density.At<TLanes, TAccess>(row));
            TLanes years = HolidayKernel.BothYears(
                zinc, batch.rates.At<TLanes, TAccess>(row), batch.law.At<TLanes, TAccess>(row), demand);
            TAccess.Store(years, ref MemoryMarshal.GetReference(batch.years), row);
        }
    }
}
