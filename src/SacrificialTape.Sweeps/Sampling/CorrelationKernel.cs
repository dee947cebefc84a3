using System.Globalization;
using SacrificialTape.Sweeps.Batch;

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

    /// <summary>Makes the shares of inputs that are named in a correlation go together, in all rows of a block.</summary>
    internal static void Mix(double[,] lower, SweepBlock block)
    {
        ReadOnlySpan<int> mixed = block.Inputs.Mixed;
        foreach (int input in mixed)
        {
            Span<double> column = block.Column(input);
            RowLoop.InPlace(new NormalDraws(column, 0, 1), column.Length);
        }

        // From the last on, so that those before it are still independent when it takes its part of them.
        for (int i = mixed.Length - 1; i >= 0; i--)
        {
            Span<double> column = block.Column(mixed[i]);
            foreach (ref double z in column)
            {
                z *= lower[i, i];
            }

            for (int j = 0; j < i; j++)
            {
                ReadOnlySpan<double> other = block.Column(mixed[j]);
                double share = lower[i, j];
                for (int row = 0; row < column.Length; row++)
                {
                    column[row] += share * other[row];
                }
            }

            RowLoop.InPlace(new NormalShares(column), column.Length);
        }
    }
}
