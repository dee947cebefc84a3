using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>Rates from what a site or a coupon tells. Doubles in the unit that each name carries.</summary>
internal static class ExposureKernel
{
    /// <summary>um of the metal from g, cm2, h and g/cm3: 10 000 um in a cm, 8760 h in a year.</summary>
    internal const double CouponConstant = 8.76e7;

    // ISO 9223:2012 equation 2. Each term: factor x deposition^power x exp(by humidity + by temperature).
    private const double ZincSulfurFactor = 0.0129;
    private const double ZincSulfurPower = 0.44;
    private const double ZincSulfurHumidity = 0.046;
    private const double ZincBelowTen = 0.038;
    private const double ZincAboveTen = 0.071;
    private const double ZincChlorideFactor = 0.0175;
    private const double ZincChloridePower = 0.57;
    private const double ZincChlorideHumidity = 0.008;
    private const double ZincChlorideWarmth = 0.085;

    /// <summary>ISO 9223:2012 equation 2.</summary>
    internal static DoseTerms Zinc<TSteps>(double celsius, double percent, double sulfur, double chloride, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double warmth = Warmth(celsius, ZincBelowTen, ZincAboveTen);
        double first = ZincSulfurFactor * Math.Pow(sulfur, ZincSulfurPower) * Math.Exp((ZincSulfurHumidity * percent) + warmth);
        double second = ZincChlorideFactor * Math.Pow(chloride, ZincChloridePower)
            * Math.Exp((ZincChlorideHumidity * percent) + (ZincChlorideWarmth * celsius));
        double rate = first + second;
        if (TSteps.Records)
        {
            steps.Add(ExposureFormulas.ZincWarmth, [celsius], warmth);
            steps.Add(ExposureFormulas.ZincSulfur, [sulfur, percent, warmth], first);
            steps.Add(ExposureFormulas.ZincChloride, [chloride, percent, celsius], second);
            steps.Add(ExposureFormulas.ZincRate, [first, second], rate);
        }

        return new DoseTerms(first, second, rate);
    }

    /// <summary>
    /// The same in lanes. A power is the exponential of a multiple of the logarithm, so that a term takes one of each; without
    /// deposition the logarithm is -infinity and its term 0. Not a number outside the range.
    /// </summary>
    internal static TLanes ZincRate<TLanes>(
        TLanes celsius, TLanes percent, TLanes sulfur, TLanes chloride, in DoseRangeTerms range)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes above = celsius - 10;
        TLanes warmth = TLanes.Min(ZincBelowTen * above, -ZincAboveTen * above);
        TLanes first = ZincSulfurFactor * TLanes.Exp((ZincSulfurPower * TLanes.Log(sulfur)) + ((ZincSulfurHumidity * percent) + warmth));
        TLanes second = ZincChlorideFactor
            * TLanes.Exp((ZincChloridePower * TLanes.Log(chloride)) + ((ZincChlorideHumidity * percent) + (ZincChlorideWarmth * celsius)));
        return TLanes.Where(range.Holds(celsius, percent, sulfur, chloride), first + second, double.NaN);
    }

    /// <summary>ISO 9223:2012 equation 1.</summary>
    internal static DoseTerms Steel<TSteps>(double celsius, double percent, double sulfur, double chloride, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double warmth = Warmth(celsius, 0.150, 0.054);
        double first = 1.77 * Math.Pow(sulfur, 0.52) * Math.Exp((0.020 * percent) + warmth);
        double second = 0.102 * Math.Pow(chloride, 0.62) * Math.Exp((0.033 * percent) + (0.040 * celsius));
        double rate = first + second;
        if (TSteps.Records)
        {
            steps.Add(ExposureFormulas.SteelWarmth, [celsius], warmth);
            steps.Add(ExposureFormulas.SteelSulfur, [sulfur, percent, warmth], first);
            steps.Add(ExposureFormulas.SteelChloride, [chloride, percent, celsius], second);
            steps.Add(ExposureFormulas.SteelRate, [first, second], rate);
        }

        return new DoseTerms(first, second, rate);
    }

    /// <summary>r exp(-s) to r exp(+s).</summary>
    internal static RateRange Interval<TSteps>(double rate, double spread, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double low = rate * Math.Exp(-spread);
        double high = rate * Math.Exp(spread);
        if (TSteps.Records)
        {
            steps.Add(ExposureFormulas.LowRate, [rate, spread], low);
            steps.Add(ExposureFormulas.HighRate, [rate, spread], high);
        }

        return new RateRange(CorrosionRate.FromMicrometersPerYear(low), CorrosionRate.FromMicrometersPerYear(high));
    }

    /// <summary>mg/(m2.d) from ug/m3.</summary>
    internal static double SulfurDeposition(double microgramsPerCubicMeter) => 0.8 * microgramsPerCubicMeter;

    /// <summary>r = K W / (A T D), um/a.</summary>
    internal static double CouponRate<TSteps>(double grams, double squareCm, double hours, double gramsPerCubicCm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = CouponConstant * grams / (squareCm * hours * gramsPerCubicCm);
        if (TSteps.Records)
        {
            steps.Add(ExposureFormulas.CouponRate, [grams, squareCm, hours, gramsPerCubicCm], rate);
        }

        return rate;
    }

    /// <summary>g/(m2.a): 10 000 cm2 in a m2 and 8760 h in a year make the same constant.</summary>
    internal static double CouponMass<TSteps>(double grams, double squareCm, double hours, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rate = CouponConstant * grams / (squareCm * hours);
        if (TSteps.Records)
        {
            steps.Add(ExposureFormulas.CouponMass, [grams, squareCm, hours], rate);
        }

        return rate;
    }

    /// <summary>Standard uncertainty of the rate from those of weighing and area, which know nothing of one another.</summary>
    internal static double CouponUncertainty<TSteps>(
        double grams, double squareCm, double hours, double gramsPerCubicCm, double ofGrams, double ofSquareCm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double fromArea = grams * ofSquareCm / squareCm;
        double uncertainty = CouponConstant * Math.Sqrt((ofGrams * ofGrams) + (fromArea * fromArea)) / (squareCm * hours * gramsPerCubicCm);
        if (TSteps.Records)
        {
            steps.Add(
                ExposureFormulas.CouponUncertainty, [ofGrams, grams, ofSquareCm, squareCm, hours, gramsPerCubicCm], uncertainty);
        }

        return uncertainty;
    }

    /// <summary>Two standard uncertainties to each side; a rate is never below zero.</summary>
    internal static RateRange CouponRange<TSteps>(double rate, double uncertainty, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double low = Math.Max(0, rate - (2 * uncertainty));
        double high = rate + (2 * uncertainty);
        if (TSteps.Records)
        {
            steps.Add(ExposureFormulas.CouponLow, [rate, uncertainty], low);
            steps.Add(ExposureFormulas.CouponHigh, [rate, uncertainty], high);
        }

        return new RateRange(CorrosionRate.FromMicrometersPerYear(low), CorrosionRate.FromMicrometersPerYear(high));
    }

    // Of the two branches the smaller one holds; adding zero turns the -0 at exactly 10 degC into 0.
    private static double Warmth(double celsius, double below, double above) =>
        Math.Min(below * (celsius - 10), -above * (celsius - 10)) + 0.0;
}
