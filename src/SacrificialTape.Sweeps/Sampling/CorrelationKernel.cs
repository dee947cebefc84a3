using System.Globalization;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>The Gaussian copula: independent shares become shares that go together, each still uniform.</summary>
internal static class CorrelationKernel
{
    /// <summary>The lower triangle L of R = L L^T, row by row; refuses an R that no normal numbers can have.</summary>
    internal static double[,] Triangle(double[,] correlation, IReadOnlyList<string> names)
    {
        int count = names.Count;
        double[,] lower = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double rest = correlation[i, j];
                for (int k = 0; k < j; k++)
                {
                    rest -= lower[i, k] * lower[j, k];
                }

                if (i != j)
                {
                    lower[i, j] = rest / lower[j, j];
                }
                else if (rest > 1e-12)
                {
                    lower[i, i] = Math.Sqrt(rest);
                }
                else
                {
                    throw new ArgumentException(string.Create(
                        CultureInfo.InvariantCulture,
                        $"The correlations contradict one another: what '{names[i]}' has in common with {string.Join(", ", names.Take(i).Select(static name => $"'{name}'"))} leaves a variance of {rest:G3}, and it must be more than 0 (the matrix is not positive definite). Make some of them smaller."),
                        nameof(correlation));
                }
            }
        }

        return lower;
    }

    /// <summary>Makes one row of shares go together.</summary>
    internal static void Mix(double[,] lower, Span<double> shares, Span<double> scratch)
    {
        for (int i = 0; i < shares.Length; i++)
        {
            scratch[i] = NormalKernel.Quantile(shares[i]);
        }

        for (int i = 0; i < shares.Length; i++)
        {
            double z = 0;
            for (int j = 0; j <= i; j++)
            {
                z += lower[i, j] * scratch[j];
            }

            // Sums of normal numbers may leave the range in which a share differs from 0 and 1.
            shares[i] = Math.Clamp(NormalKernel.Below(z), 1e-300, 1 - (1.0 / (1UL << 53)));
        }
    }
}
