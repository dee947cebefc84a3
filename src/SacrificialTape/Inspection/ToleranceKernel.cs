using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Inspection;

/// <summary>Lower tolerance limits: by the normal distribution and by rank. Thicknesses in um, shares in parts of one.</summary>
internal static class ToleranceKernel
{
    /// <summary>k, so that the mean less k standard deviations lies below the share p of all with confidence g.</summary>
    internal static double Factor<TSteps>(int count, double coverage, double confidence, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double z = NormalKernel.Quantile(coverage);
        double root = Math.Sqrt(count);
        double shift = z * root;
        double t = NoncentralTKernel.Quantile(confidence, count - 1, shift);
        double factor = t / root;
        if (TSteps.Records)
        {
            steps.Add(ToleranceFormulas.Shift, [z, count], shift);
            steps.Add(ToleranceFormulas.Factor, [t, count], factor);
        }

        return factor;
    }

    /// <summary>x - k s, um.</summary>
    internal static double LimitUm<TSteps>(double meanUm, double deviationUm, double factor, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double limit = meanUm - (factor * deviationUm);
        if (TSteps.Records)
        {
            steps.Add(ToleranceFormulas.Limit, [meanUm, factor, deviationUm], limit);
        }

        return limit;
    }

    /// <summary>How many readings until the lowest of them is such a limit.</summary>
    internal static double LeastReadings<TSteps>(double coverage, double confidence, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double least = WithAllowance.Ceiling(Math.Log(1 - confidence) / Math.Log(coverage));
        if (TSteps.Records)
        {
            steps.Add(ToleranceFormulas.LeastReadings, [confidence, coverage], least);
        }

        return least;
    }

    /// <summary>
    /// The highest rank from below that still is such a limit, 0 if none is, and the confidence it has: the number of
    /// readings below the share 1 - p is binomial.
    /// </summary>
    internal static (int Rank, double Confidence) Rank<TSteps>(int count, double coverage, double confidence, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double logTerm = count * Math.Log(coverage);
        double odds = Math.Log((1 - coverage) / coverage);
        double below = 0;
        double kept = 0;
        int rank = 0;
        while (rank < count)
        {
            double next = below + Math.Exp(logTerm);
            if (!WithAllowance.AtMost(next, 1 - confidence))
            {
                break;
            }

            logTerm += Math.Log((double)(count - rank) / (rank + 1)) + odds;
            below = next;
            kept = next;
            rank++;
        }

        double reached = rank == 0 ? 0 : 1 - kept;
        if (TSteps.Records && rank > 0)
        {
            steps.Add(ToleranceFormulas.RankConfidence, [kept], reached);
        }

        return (rank, reached);
    }
}
