using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>
/// Quantiles of random rows come nearer to the true one as theory says: their standard error is the root of p (1 - p) / n over
/// the density there (F. Mosteller, Ann. Math. Stat. 17 (1946) 377-408; recalled, check before use).
/// </summary>
public sealed class QuantileErrors
{
    private const double Share = 0.3;
    private const int Seeds = 200;

    // 200 seeds tell a standard error to 5 % (1 over the root of 400); four of these are allowed. The seeds are fixed.
    [Theory]
    [InlineData(256)]
    [InlineData(1024)]
    [InlineData(4096)]
    public void They_shrink_with_the_root_of_the_rows(int rows)
    {
        double root = Math.Sqrt(Share * (1 - Share) / rows);
        Assert.Equal(root, Error(new UniformValues(0, 1), new Histogram(0, 1, 20_000), Share, rows), 0.2 * root);

        // The normal quantile of 0.3 as printed in tables, and the density there.
        const double Z = -0.524400512708041;
        double density = Math.Exp(-Z * Z / 2) / Math.Sqrt(2 * Math.PI);
        Assert.Equal(root / density, Error(new NormalValues(0, 1), new Histogram(-6, 6, 40_000), Z, rows), 0.2 * root / density);
    }

    private static double Error(InputValues values, Histogram empty, double exact, int rows)
    {
        double squares = 0;
        double[] drawn = new double[rows];
        for (int seed = 1; seed <= Seeds; seed++)
        {
            new RandomDesign((ulong)seed, rows).Shares(0, 0, drawn);
            Summary histogram = empty.Fresh();
            histogram.Add(0, [.. drawn.Select(values.At)]);
            double off = ((Histogram)histogram).Quantile(Share).Middle - exact;
            squares += off * off;
        }

        return Math.Sqrt(squares / Seeds);
    }
}
