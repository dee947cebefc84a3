using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>Gumbel's distribution of greatest values, F = exp(-exp(-(x - location)/scale)), in um.</summary>
internal static class GumbelKernel
{
    /// <summary>Euler's constant.</summary>
    internal const double Euler = 0.57721566490153286;

    internal static (double Location, double Scale) ByMoments<TSteps>(double meanUm, double deviationUm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double scale = deviationUm * Math.Sqrt(6) / Math.PI;
        double location = meanUm - (Euler * scale);
        if (TSteps.Records)
        {
            steps.Add(ExtremeFormulas.ScaleByMoments, [deviationUm], scale);
            steps.Add(ExtremeFormulas.LocationByMoments, [meanUm, Euler, scale], location);
        }

        return (location, scale);
    }

    /// <summary>
    /// The scale a solves mean - sum(x w)/sum(w) = a with w = exp(-x/a). Counted from the least value, so that nothing
    /// overflows: at a near zero the left side is the mean, at the mean it is at most that.
    /// </summary>
    internal static (double Location, double Scale) ByLikelihood<TSteps>(double[] um, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double least = um.Min();
        double mean = um.Average();
        double above = mean - least;
        double scale = BracketedRoot.Find(a => above - WeightedAbove(um, least, a) - a, above * 1e-6, above, 1e-14);
        double weight = um.Average(x => Math.Exp(-(x - least) / scale));
        double location = least - (scale * Math.Log(weight));
        if (TSteps.Records)
        {
            steps.Add(ExtremeFormulas.ScaleByLikelihood, [mean, least + WeightedAbove(um, least, scale)], scale);
            steps.Add(ExtremeFormulas.LocationByLikelihood, [least, scale, weight], location);
        }

        return (location, scale);
    }

    internal static double ReturnPeriod<TSteps>(double wholeM2, double sampleM2, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double period = wholeM2 / sampleM2;
        if (TSteps.Records)
        {
            steps.Add(ExtremeFormulas.ReturnPeriod, [wholeM2, sampleM2], period);
        }

        return period;
    }

    internal static double SampledShare(int count, double wholeM2, double sampleM2) => count * sampleM2 / wholeM2;

    /// <summary>The value that one sample area in T exceeds.</summary>
    internal static double Greatest<TSteps>(double location, double scale, double period, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        // ln(1 - 1/T) keeps its digits for large T.
        double x = 1 / period;
        double log = x < 1e-4 ? -x - (x * x / 2) - (x * x * x / 3) : Math.Log(1 - x);
        double greatest = location - (scale * Math.Log(-log));
        if (TSteps.Records)
        {
            steps.Add(ExtremeFormulas.Greatest, [location, scale, period], greatest);
        }

        return greatest;
    }

    internal static double GreatestByLogarithm<TSteps>(double location, double scale, double period, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double greatest = location + (scale * Math.Log(period));
        if (TSteps.Records)
        {
            steps.Add(ExtremeFormulas.GreatestByLogarithm, [location, scale, period], greatest);
        }

        return greatest;
    }

    /// <summary>The value that the greatest of the whole area stays below with a probability: F(x)^T.</summary>
    internal static double NotExceeded<TSteps>(double location, double scale, double period, double probability, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double value = location + (scale * (Math.Log(period) - Math.Log(-Math.Log(probability))));
        if (TSteps.Records)
        {
            steps.Add(ExtremeFormulas.NotExceeded, [location, scale, period, probability], value);
        }

        return value;
    }

    private static double WeightedAbove(double[] um, double least, double scale)
    {
        double weights = 0;
        double sum = 0;
        foreach (double x in um)
        {
            double weight = Math.Exp(-(x - least) / scale);
            weights += weight;
            sum += weight * (x - least);
        }

        return sum / weights;
    }
}
