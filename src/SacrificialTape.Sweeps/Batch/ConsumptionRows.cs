using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Sweeps.Batch;

/// <summary>
/// Metal used up by a current, row by row: see <see cref="FaradayLaw"/>, <see cref="ServiceLife.AnodeMass"/> and <see cref="ServiceLife.AnodeLife"/>. Bit
/// for bit the scalar forms.
/// </summary>
/// <remarks>
/// A row is NaN where a value is NaN or outside the range that the typed form asks for. Columns must be as long as the destination
/// and apart from it. Nothing is allocated.
/// </remarks>
public static class ConsumptionRows
{
    /// <summary>How fast a surface recedes at a current density, um/a.</summary>
    /// <param name="amperesPerM2">Anodic current density, A/m2; at least 0.</param>
    /// <param name="metal">The metal.</param>
    /// <param name="kilogramsPerM3">Its density, kg/m3; more than 0.</param>
    /// <param name="umPerYear">Where the rates go, um/a.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such metal.</exception>
    public static void Recession(Column amperesPerM2, Metal metal, Column kilogramsPerM3, Span<double> umPerYear)
    {
        amperesPerM2.Check(umPerYear, nameof(amperesPerM2));
        kilogramsPerM3.Check(umPerYear, nameof(kilogramsPerM3));
        if (Known(metal) == Metal.Zinc)
        {
            RowLoop.Run(new FiveColumns<ZincRecession>(amperesPerM2, kilogramsPerM3, 0, 0, 0, umPerYear), umPerYear.Length);
        }
        else
        {
            RowLoop.Run(new FiveColumns<SteelRecession>(amperesPerM2, kilogramsPerM3, 0, 0, 0, umPerYear), umPerYear.Length);
        }
    }

    /// <summary>The mass that goes at a current density, g/(m2.a).</summary>
    /// <param name="amperesPerM2">Anodic current density, A/m2; at least 0.</param>
    /// <param name="metal">The metal.</param>
    /// <param name="gramsPerM2Year">Where the losses go, g/(m2.a).</param>
    /// <exception cref="ArgumentException">The column is not as long as the destination, or shares memory with it.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such metal.</exception>
    public static void MassLoss(Column amperesPerM2, Metal metal, Span<double> gramsPerM2Year)
    {
        amperesPerM2.Check(gramsPerM2Year, nameof(amperesPerM2));
        if (Known(metal) == Metal.Zinc)
        {
            RowLoop.Run(new FiveColumns<ZincMassLoss>(amperesPerM2, 0, 0, 0, 0, gramsPerM2Year), gramsPerM2Year.Length);
        }
        else
        {
            RowLoop.Run(new FiveColumns<SteelMassLoss>(amperesPerM2, 0, 0, 0, 0, gramsPerM2Year), gramsPerM2Year.Length);
        }
    }

    /// <summary>Mass of anode that gives a current for a time, kg, by practical capacity.</summary>
    /// <param name="amperes">Current on the mean, A; more than 0.</param>
    /// <param name="timeYears">Time, years of 365 d; more than 0.</param>
    /// <param name="ampereHoursPerKg">Practical capacity, A.h/kg; more than 0, at most the theoretical one of zinc.</param>
    /// <param name="usable">Share of the anode that may be used up; more than 0, at most 1.</param>
    /// <param name="massKg">Where the masses go, kg.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void AnodeMass(Column amperes, Column timeYears, Column ampereHoursPerKg, Column usable, Span<double> massKg)
    {
        amperes.Check(massKg, nameof(amperes));
        timeYears.Check(massKg, nameof(timeYears));
        ampereHoursPerKg.Check(massKg, nameof(ampereHoursPerKg));
        usable.Check(massKg, nameof(usable));
        RowLoop.Run(new FiveColumns<Masses>(amperes, timeYears, usable, ampereHoursPerKg, 0, massKg), massKg.Length);
    }

    /// <summary>Mass of anode that gives a current for a time, kg, by theoretical consumption and efficiency.</summary>
    /// <param name="amperes">Current on the mean, A; more than 0.</param>
    /// <param name="timeYears">Time, years of 365 d; more than 0.</param>
    /// <param name="kgPerAmpereYear">Consumption at full efficiency, kg/(A.a); more than 0.</param>
    /// <param name="efficiency">Efficiency; more than 0, at most 1.</param>
    /// <param name="usable">Share of the anode that may be used up; more than 0, at most 1.</param>
    /// <param name="massKg">Where the masses go, kg.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void AnodeMassByConsumption(
        Column amperes, Column timeYears, Column kgPerAmpereYear, Column efficiency, Column usable, Span<double> massKg)
    {
        amperes.Check(massKg, nameof(amperes));
        timeYears.Check(massKg, nameof(timeYears));
        kgPerAmpereYear.Check(massKg, nameof(kgPerAmpereYear));
        efficiency.Check(massKg, nameof(efficiency));
        usable.Check(massKg, nameof(usable));
        RowLoop.Run(new FiveColumns<MassesByConsumption>(timeYears, kgPerAmpereYear, amperes, efficiency, usable, massKg), massKg.Length);
    }

    /// <summary>Life of an anode that gives a current, years, by practical capacity.</summary>
    /// <param name="massKg">Mass of the anode, kg; more than 0.</param>
    /// <param name="ampereHoursPerKg">Practical capacity, A.h/kg; more than 0, at most the theoretical one of zinc.</param>
    /// <param name="usable">Share of the anode that may be used up; more than 0, at most 1.</param>
    /// <param name="amperes">Current on the mean, A; more than 0.</param>
    /// <param name="lifeYears">Where the years go, of 365 d.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void AnodeLife(Column massKg, Column ampereHoursPerKg, Column usable, Column amperes, Span<double> lifeYears)
    {
        massKg.Check(lifeYears, nameof(massKg));
        ampereHoursPerKg.Check(lifeYears, nameof(ampereHoursPerKg));
        usable.Check(lifeYears, nameof(usable));
        amperes.Check(lifeYears, nameof(amperes));
        RowLoop.Run(new FiveColumns<Lives>(massKg, usable, ampereHoursPerKg, amperes, 0, lifeYears), lifeYears.Length);
    }

    /// <summary>Life of an anode that gives a current, years, by theoretical consumption and efficiency.</summary>
    /// <param name="massKg">Mass of the anode, kg; more than 0.</param>
    /// <param name="kgPerAmpereYear">Consumption at full efficiency, kg/(A.a); more than 0.</param>
    /// <param name="efficiency">Efficiency; more than 0, at most 1.</param>
    /// <param name="usable">Share of the anode that may be used up; more than 0, at most 1.</param>
    /// <param name="amperes">Current on the mean, A; more than 0.</param>
    /// <param name="lifeYears">Where the years go, of 365 d.</param>
    /// <exception cref="ArgumentException">A column is not as long as the destination, or shares memory with it.</exception>
    public static void AnodeLifeByConsumption(
        Column massKg, Column kgPerAmpereYear, Column efficiency, Column usable, Column amperes, Span<double> lifeYears)
    {
        massKg.Check(lifeYears, nameof(massKg));
        kgPerAmpereYear.Check(lifeYears, nameof(kgPerAmpereYear));
        efficiency.Check(lifeYears, nameof(efficiency));
        usable.Check(lifeYears, nameof(usable));
        amperes.Check(lifeYears, nameof(amperes));
        RowLoop.Run(new FiveColumns<LivesByConsumption>(massKg, efficiency, usable, kgPerAmpereYear, amperes, lifeYears), lifeYears.Length);
    }

    private static Metal Known(Metal metal) => Enum.IsDefined(metal)
        ? metal
        : throw new ArgumentOutOfRangeException(nameof(metal), metal, "Not a metal known here.");

    private readonly struct ZincRecession : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => GalvanicKernel.Recession(one, Metal.Zinc, two);
    }

    private readonly struct SteelRecession : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => GalvanicKernel.Recession(one, Metal.CarbonSteel, two);
    }

    private readonly struct ZincMassLoss : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => GalvanicKernel.MassLoss(one, Metal.Zinc);
    }

    private readonly struct SteelMassLoss : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => GalvanicKernel.MassLoss(one, Metal.CarbonSteel);
    }

    private readonly struct Masses : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => HolidayKernel.Mass(one, two, three, four);
    }

    private readonly struct MassesByConsumption : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => HolidayKernel.MassByConsumption(one, two, three, four, five);
    }

    private readonly struct Lives : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => HolidayKernel.Life(one, two, three, four);
    }

    private readonly struct LivesByConsumption : IFiveColumns
    {
        public static TLanes Of<TLanes>(TLanes one, TLanes two, TLanes three, TLanes four, TLanes five)
            where TLanes : struct, ILanes<TLanes> => HolidayKernel.LifeByConsumption(one, two, three, four, five);
    }
}
