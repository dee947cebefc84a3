using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The closed forms of lives with their uncertainty. Doubles in the unit that each name carries.</summary>
internal static class SpreadKernel
{
    /// <summary>Median and s of a log-normal rate whose bounds are quantiles.</summary>
    internal static LogNormalRate FromBounds<TSteps>(double lowUm, double highUm, double below, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double z = -NormalKernel.Quantile(below);
        double median = Math.Sqrt(lowUm * highUm);
        double spread = Math.Log(highUm / lowUm) / (2 * z);
        if (TSteps.Records)
        {
            steps.Add(SpreadFormulas.MedianFromBounds, [lowUm, highUm], median);
            steps.Add(SpreadFormulas.SpreadFromBounds, [highUm, lowUm, z], spread);
        }

        return new LogNormalRate(CorrosionRate.FromMicrometersPerYear(median), LogSpread.FromValue(spread));
    }

    /// <summary>(B2 - B1) / 2.</summary>
    internal static double StandardError<TSteps>(double mean, double upper, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double error = (upper - mean) / 2;
        if (TSteps.Records)
        {
            steps.Add(SpreadFormulas.StandardError, [upper, mean], error);
        }

        return error;
    }

    /// <summary>m exp(z s), um/a.</summary>
    internal static double RateAt<TSteps>(double median, double sigma, double confidence, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double z = NormalKernel.Quantile(confidence);
        double rate = median * Math.Exp(z * sigma);
        if (TSteps.Records)
        {
            steps.Add(SpreadFormulas.RateAt, [median, z, sigma], rate);
        }

        return rate;
    }

    /// <summary>s / b.</summary>
    internal static double LogNormalSpread(double sigma, double exponent) => sigma / exponent;

    /// <summary>Whole layers for a life.</summary>
    internal static double LeastLayers(double years, double layerYears) => WithAllowance.Ceiling(years / layerYears);

    /// <summary>um from g/m2 and kg/m3.</summary>
    internal static double HotDipUm(double gramsPerM2, double kilogramsPerM3) => 1000 * gramsPerM2 / kilogramsPerM3;
}
