using System.Runtime.CompilerServices;
using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>Zinc beside bare steel and anode mass, in doubles.</summary>
internal static class HolidayKernel
{
    private const double RootWidth = 1e-14;

    // In lanes the root is sought in ln t, where the loss is convex and each step of Newton's goes down to it: a step this small
    // leaves an error of its square, and one more step in t itself leaves rounding alone.
    private const double LastLogStep = 1e-6;
    private const int MostLogSteps = 100;

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

    /// <summary>
    /// The same in lanes; not a number where the foil is no foil (5 um to 2 mm) or the usable share not above 0 and at most 1.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes Zinc<TLanes>(TLanes usable, TLanes foilUm)
        where TLanes : struct, ILanes<TLanes> =>
        TLanes.Where(Share(usable) & (foilUm >= 5) & (foilUm <= 2000), usable * foilUm, double.NaN);

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

    /// <summary>
    /// The same in lanes. Not a number where ratio or demand is not finite or below zero, the capacity not above zero or more than
    /// Faraday's law allows, or the density not that of zinc (6000 to 8000 kg/m3).
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes DemandRate<TLanes>(TLanes barePerZinc, TLanes amperesPerM2, TLanes capacity, TLanes kilogramsPerM3)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            (barePerZinc >= 0) & (barePerZinc <= double.MaxValue) & (amperesPerM2 >= 0) & (amperesPerM2 <= double.MaxValue)
                & Capacity(capacity) & (kilogramsPerM3 >= 6000) & (kilogramsPerM3 <= 8000),
            UnitConversions.HoursPerYear * 1e6 * barePerZinc * amperesPerM2 / (capacity * kilogramsPerM3),
            double.NaN);

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
        if (latest == 0)
        {
            // A demand that overflows takes all zinc at once.
            return 0;
        }

        double Over(double years) => ownLossUm(years) + (demandRate * years) - zincUm;

        // Where one of the two is next to nothing, rounding may leave a digit of zinc at the end that the other one alone gives.
        return Over(latest) <= 0 ? latest : BracketedRoot.Find(Over, 0, latest, RootWidth);
    }

    /// <summary>
    /// The same in lanes with own loss by the power law: beyond 20 years a straight line, before that r t^b + g t = s by Newton's
    /// steps in ln t. A lane that has come to rest keeps still, so that it comes out the same whatever the others need. Not a number
    /// where the power law or the demand is none; zinc must be more than 0.
    /// </summary>
    internal static TLanes BothYears<TLanes>(TLanes zincUm, TLanes rate, in PowerLawLanes<TLanes> law, TLanes demandRate)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes own = LossKernel.PowerYears(zincUm, rate, law);
        TLanes fed = zincUm / demandRate;
        TLanes atKnee = (rate * law.AtKnee) + (demandRate * PowerLawTerms.KneeYears);
        TLanes years = PowerLawTerms.KneeYears + ((zincUm - atKnee) / ((rate * law.SlopeAfter) + demandRate));
        TLanes within = zincUm < atKnee;
        if (TLanes.Any(within))
        {
            years = TLanes.Where(within, Within(zincUm, rate, law.Exponent, demandRate, TLanes.Min(own, fed)), years);
        }

        TLanes alone = TLanes.Where(TLanes.Same(demandRate, 0), own, TLanes.Where(TLanes.Same(own, double.PositiveInfinity) | TLanes.Same(fed, 0), fed, years));
        return TLanes.Where((own >= 0) & (demandRate >= 0), alone, double.NaN);
    }

    private static TLanes Within<TLanes>(TLanes zincUm, TLanes rate, TLanes exponent, TLanes demandRate, TLanes latest)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes logYears = TLanes.Log(latest);
        TLanes moving = latest > 0;
        for (int i = 0; i < MostLogSteps && TLanes.Any(moving); i++)
        {
            TLanes own = rate * TLanes.Exp(exponent * logYears);
            TLanes fed = demandRate * TLanes.Exp(logYears);
            TLanes step = TLanes.Log((own + fed) / zincUm) * (own + fed) / ((exponent * own) + fed);
            logYears = TLanes.Where(moving, logYears - step, logYears);
            moving &= TLanes.Abs(step) > LastLogStep;
        }

        TLanes years = TLanes.Exp(logYears);
        TLanes loss = rate * TLanes.Exp(exponent * logYears);
        TLanes taken = demandRate * years;
        return years - (((loss + taken) - zincUm) * years / ((exponent * loss) + taken));
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

    /// <summary>The same in lanes; not a number where a value is not above zero, or more than there can be of it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes Mass<TLanes>(TLanes amperes, TLanes years, TLanes usable, TLanes capacity)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            Positive(amperes) & Positive(years) & Share(usable) & Capacity(capacity),
            UnitConversions.HoursPerYear * amperes * years / (usable * capacity),
            double.NaN);

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

    /// <summary>The same in lanes; not a number where a value is not above zero, or more than there can be of it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes Life<TLanes>(TLanes kilograms, TLanes usable, TLanes capacity, TLanes amperes)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            Positive(kilograms) & Share(usable) & Capacity(capacity) & Positive(amperes),
            kilograms * usable * capacity / (UnitConversions.HoursPerYear * amperes),
            double.NaN);

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

    /// <summary>The same in lanes; not a number where a value is not above zero, or more than there can be of it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes MassByConsumption<TLanes>(TLanes years, TLanes consumption, TLanes amperes, TLanes efficiency, TLanes usable)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            Positive(years) & Positive(consumption) & Positive(amperes) & Share(efficiency) & Share(usable),
            years * consumption * amperes / (efficiency * usable),
            double.NaN);

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

    /// <summary>The same in lanes; not a number where a value is not above zero, or more than there can be of it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes LifeByConsumption<TLanes>(TLanes kilograms, TLanes efficiency, TLanes usable, TLanes consumption, TLanes amperes)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(
            Positive(kilograms) & Share(efficiency) & Share(usable) & Positive(consumption) & Positive(amperes),
            kilograms * efficiency * usable / (consumption * amperes),
            double.NaN);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Positive<TLanes>(TLanes value)
        where TLanes : struct, ILanes<TLanes> => (value > 0) & (value <= double.MaxValue);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Share<TLanes>(TLanes value)
        where TLanes : struct, ILanes<TLanes> => (value > 0) & (value <= 1);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Capacity<TLanes>(TLanes value)
        where TLanes : struct, ILanes<TLanes> => (value > 0) & (value <= GalvanicKernel.ZincCapacity());
}
