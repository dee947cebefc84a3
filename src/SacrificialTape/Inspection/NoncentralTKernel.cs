using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Inspection;

/// <summary>
/// Student's t distribution, central and non-central: T = (Z + d)/W with Z normal and W the root of chi-squared over its
/// degrees of freedom. Degrees of freedom need not be whole.
/// </summary>
/// <remarks>
/// P(T at most t) is the mean of N(t W - d) over W. With W = exp(u) the weight exp(v (u - exp(2u)/2)) dies away on both
/// sides, so the plain trapezoidal rule converges faster than any power of its step. Dividing by the sum of the weights
/// spares the constant, and with it the gamma function. Every term is positive: nothing cancels, however far the tail.
/// </remarks>
internal static class NoncentralTKernel
{
    // Of the narrower of the two widths, that of the weight and that of the step of N. Held by tests to 1e-12.
    private const double StepsPerWidth = 4;

    // Of the weight at its peak: below, a term no longer shows.
    private const double LeastWeight = 1e-22;

    /// <summary>P(T above t), with its digits kept where it is small.</summary>
    internal static double Above(double t, double freedom, double shift) => MeanOfNormal(-t, freedom, shift);

    /// <summary>The t that the central T exceeds with a share of at most one half.</summary>
    internal static double StudentUpper(double share, double freedom)
    {
        if (share == 0.5)
        {
            return 0;
        }

        double high = 1;
        while (Above(high, freedom, 0) > share)
        {
            high *= 2;
        }

        return BracketedRoot.Find(t => Math.Log(Above(t, freedom, 0) / share), 0, high, 1e-14);
    }

    /// <summary>The t that the non-central T lies below with a share of at least one half; the shift zero or more.</summary>
    internal static double Quantile(double share, double freedom, double shift)
    {
        // Below(0) is N(-shift), at most one half.
        double high = shift + 1;
        while (Above(high, freedom, shift) > 1 - share)
        {
            high *= 2;
        }

        return BracketedRoot.Find(t => (1 - share) - Above(t, freedom, shift), 0, high, 1e-14);
    }

    // Mean of N(factor W + offset).
    private static double MeanOfNormal(double factor, double freedom, double offset)
    {
        double step = Math.Min(1 / Math.Sqrt(2 * freedom), 1 / Math.Max(1, Math.Abs(offset))) / StepsPerWidth;
        double sum = NormalKernel.Below(factor + offset);
        double weights = 1;
        for (int side = -1; side <= 1; side += 2)
        {
            for (int i = 1; ; i++)
            {
                double u = side * i * step;
                double weight = Math.Exp(freedom * (u - ((Math.Exp(2 * u) - 1) / 2)));
                if (weight < LeastWeight)
                {
                    break;
                }

                weights += weight;
                sum += weight * NormalKernel.Below((factor * Math.Exp(u)) + offset);
            }
        }

        return sum / weights;
    }
}
