using System.Runtime.CompilerServices;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>Loss over time and its inverse, in um, um/a and years. A rate of zero never uses anything up.</summary>
internal static class LossKernel
{
    /// <summary>D = r t.</summary>
    internal static double LinearLossUm(double rate, double years) => rate * years;

    /// <summary>The same in lanes; not a number where rate or time is not finite or below zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes LinearLossUm<TLanes>(TLanes rate, TLanes years)
        where TLanes : struct, ILanes<TLanes> =>
        TLanes.Where(Countable(rate) & Countable(years), rate * years, double.NaN);

    /// <summary>t = s / r.</summary>
    internal static double LinearYears<TSteps>(double zincUm, double rate, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (Endless(zincUm, rate))
        {
            return double.PositiveInfinity;
        }

        double years = zincUm / rate;
        if (zincUm == 0)
        {
            years = 0;
        }

        if (TSteps.Records && rate > 0)
        {
            steps.Add(LossFormulas.LinearTime, [zincUm, rate], years);
        }

        return years;
    }

    /// <summary>The same in lanes; not a number where zinc or rate is not finite or below zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes LinearYears<TLanes>(TLanes zincUm, TLanes rate)
        where TLanes : struct, ILanes<TLanes> =>
        TLanes.Where(Countable(zincUm) & Countable(rate), FirstYears(zincUm, rate), double.NaN);

    /// <summary>D = r t^b up to 20 years, r [20^b + b 20^(b-1) (t - 20)] beyond.</summary>
    internal static double PowerLossUm(double rate, double years, in PowerLawTerms law) => rate * (years > PowerLawTerms.KneeYears
        ? law.AtKnee + (law.SlopeAfter * (years - PowerLawTerms.KneeYears))
        : Math.Pow(years, law.Exponent));

    /// <summary>
    /// The same in lanes, the power as the exponential of b ln t. Not a number where rate or time is not finite or below zero, or
    /// the exponent outside 0 to 1.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes PowerLossUm<TLanes>(TLanes rate, TLanes years, in PowerLawLanes<TLanes> law)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes share = law.AtKnee + (law.SlopeAfter * (years - PowerLawTerms.KneeYears));
        TLanes within = years <= PowerLawTerms.KneeYears;
        if (TLanes.Any(within))
        {
            share = TLanes.Where(within, TLanes.Exp(law.Exponent * TLanes.Log(years)), share);
        }

        return TLanes.Where(Countable(rate) & Countable(years) & law.Holds, rate * share, double.NaN);
    }

    /// <summary>The inverse: t = (s/r)^(1/b) while that is at most 20 years, else on the tangent.</summary>
    internal static double PowerYears<TSteps>(double zincUm, double rate, in PowerLawTerms law, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (Endless(zincUm, rate))
        {
            return double.PositiveInfinity;
        }

        double ratio = zincUm == 0 ? 0 : zincUm / rate;
        bool beyond = ratio > law.AtKnee;
        double years = beyond
            ? PowerLawTerms.KneeYears + ((ratio - law.AtKnee) / law.SlopeAfter)
            : Math.Pow(ratio, law.Inverse);
        if (TSteps.Records && rate > 0)
        {
            if (beyond)
            {
                steps.Add(LossFormulas.TangentTime, [PowerLawTerms.KneeYears, zincUm, rate, law.Exponent], years);
            }
            else
            {
                steps.Add(LossFormulas.PowerTime, [zincUm, rate, law.Exponent], years);
            }
        }

        return years;
    }

    /// <summary>
    /// The same in lanes: t = exp(ln(s/r) / b) while that is at most 20 years. Not a number where zinc or rate is not finite or
    /// below zero, or the exponent outside 0 to 1.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TLanes PowerYears<TLanes>(TLanes zincUm, TLanes rate, in PowerLawLanes<TLanes> law)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes ratio = FirstYears(zincUm, rate);
        TLanes years = PowerLawTerms.KneeYears + ((ratio - law.AtKnee) / law.SlopeAfter);

        // Long lives need no power.
        TLanes within = ratio <= law.AtKnee;
        if (TLanes.Any(within))
        {
            years = TLanes.Where(within, TLanes.Exp(law.Inverse * TLanes.Log(ratio)), years);
        }

        return TLanes.Where(Countable(zincUm) & Countable(rate) & law.Holds, years, double.NaN);
    }

    /// <summary>r b t^(b-1) up to 20 years, the slope there beyond.</summary>
    internal static double PowerRateUm(double rate, double years, in PowerLawTerms law) => rate * (years > PowerLawTerms.KneeYears
        ? law.SlopeAfter
        : law.Exponent * Math.Pow(years, law.Exponent - 1));

    // No zinc is used up at once even by no corrosion (no step shows that: it would divide by zero); some zinc never is.
    private static bool Endless(double zincUm, double rate) => rate == 0 && zincUm > 0;

    // Some zinc over no rate is endless by the division itself; no zinc is used up at once even by no corrosion.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes FirstYears<TLanes>(TLanes zincUm, TLanes rate)
        where TLanes : struct, ILanes<TLanes> => TLanes.Where(TLanes.Same(zincUm, 0), 0, zincUm / rate);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Countable<TLanes>(TLanes value)
        where TLanes : struct, ILanes<TLanes> => (value >= 0) & (value <= double.MaxValue);
}
