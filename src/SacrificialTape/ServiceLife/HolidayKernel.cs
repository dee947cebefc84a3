using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>Zinc beside bare steel and anode mass, in doubles.</summary>
internal static class HolidayKernel
{
    private const double RootWidth = 1e-14;

    /// <summary>u f, um.</summary>
    internal static double Zinc<TSteps>(double usable, double foilUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double zinc = usable * foilUm;
        if (TSteps.Records)
        {
            steps.Add(HolidayFormulas.ZincCounted, [usable, foilUm], zinc);
        }

        return zinc;
    }

    /// <summary>um/a that the demand of bare steel takes: 8760 h x 1e6 um/m x q i/(Q rho).</summary>
    internal static double DemandRate<TSteps>(double barePerZinc, double amperesPerM2, double capacity, double kilogramsPerM3, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = UnitConversions.HoursPerYear * 1e6 * barePerZinc * amperesPerM2 / (capacity * kilogramsPerM3);
        if (TSteps.Records)
        {
            steps.Add(HolidayFormulas.DemandRate, [barePerZinc, amperesPerM2, capacity, kilogramsPerM3], rate);
        }

        return rate;
    }

    /// <summary>s / g; endless without demand.</summary>
    internal static double DemandYears<TSteps>(double zincUm, double demandRate, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (demandRate == 0)
        {
            return double.PositiveInfinity;
        }

        double years = zincUm / demandRate;
        if (TSteps.Records)
        {
            steps.Add(HolidayFormulas.DemandLife, [zincUm, demandRate], years);
        }

        return years;
    }

    /// <summary>
    /// The root of own loss + g t = s. Each of the two alone takes longer, so the shorter of their lives is past the root;
    /// a power law with a straight share has no closed inverse.
    /// </summary>
    /// <param name="ownLossUm">Own loss after a time in years.</param>
    /// <param name="ownYears">Life by own corrosion alone; may be infinite.</param>
    /// <param name="zincUm">Zinc to lose.</param>
    /// <param name="demandRate">What the steel takes in a year, um.</param>
    internal static double BothYears(Func<double, double> ownLossUm, double ownYears, double zincUm, double demandRate)
    {
        if (demandRate == 0 || double.IsPositiveInfinity(ownYears))
        {
            return demandRate == 0 ? ownYears : zincUm / demandRate;
        }

        double latest = Math.Min(ownYears, zincUm / demandRate);
        return BracketedRoot.Find(years => ownLossUm(years) + (demandRate * years) - zincUm, 0, latest, RootWidth);
    }

    /// <summary>s - g t.</summary>
    internal static double OwnShare<TSteps>(double zincUm, double demandRate, double years, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double own = zincUm - (demandRate * years);
        if (TSteps.Records)
        {
            steps.Add(HolidayFormulas.OwnShare, [zincUm, demandRate, years], own);
        }

        return own;
    }

    /// <summary>8760 I t/(u Q), kg.</summary>
    internal static double Mass<TSteps>(double amperes, double years, double usable, double capacity, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double mass = UnitConversions.HoursPerYear * amperes * years / (usable * capacity);
        if (TSteps.Records)
        {
            steps.Add(HolidayFormulas.AnodeMass, [amperes, years, usable, capacity], mass);
        }

        return mass;
    }

    /// <summary>W u Q/(8760 I), years.</summary>
    internal static double Life<TSteps>(double kilograms, double usable, double capacity, double amperes, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double years = kilograms * usable * capacity / (UnitConversions.HoursPerYear * amperes);
        if (TSteps.Records)
        {
            steps.Add(HolidayFormulas.AnodeLife, [kilograms, usable, capacity, amperes], years);
        }

        return years;
    }

    /// <summary>t S I/(eta u), kg.</summary>
    internal static double MassByConsumption<TSteps>(
        double years, double consumption, double amperes, double efficiency, double usable, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double mass = years * consumption * amperes / (efficiency * usable);
        if (TSteps.Records)
        {
            steps.Add(HolidayFormulas.AnodeMassByConsumption, [years, consumption, amperes, efficiency, usable], mass);
        }

        return mass;
    }

    /// <summary>W eta u/(S I), years.</summary>
    internal static double LifeByConsumption<TSteps>(
        double kilograms, double efficiency, double usable, double consumption, double amperes, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double years = kilograms * efficiency * usable / (consumption * amperes);
        if (TSteps.Records)
        {
            steps.Add(HolidayFormulas.AnodeLifeByConsumption, [kilograms, efficiency, usable, consumption, amperes], years);
        }

        return years;
    }
}
