namespace SacrificialTape.ServiceLife;

/// <summary>
/// A spread as points with weights, chosen so that means of the normal distribution function over it are true to some
/// 1e-12. Spreads of positive numbers are held by their logarithm.
/// </summary>
internal readonly struct SpreadPoints
{
    private const double Wanted = 1e-13;
    private const int MostCondensed = 24;
    private const double MostSigmas = 4;
    private const double MostLog = 0.7;

    // exp(-28) is 7e-13: what the trapezoidal rule on a bell leaves at this step.
    private const double TrapezoidStep = 0.84;
    private const double TrapezoidEnd = 7.5;

    internal SpreadPoints(double[] points, double[] weights)
    {
        this.Points = points;
        this.Weights = weights;
    }

    internal double[] Points { get; }

    internal double[] Weights { get; }

    /// <summary>The logarithm of something spread over pieces; one point where there are none.</summary>
    /// <param name="exact">Its value where it has no spread.</param>
    /// <param name="pieces">Its density.</param>
    /// <param name="sigma">Width of the normal distribution that is averaged.</param>
    internal static SpreadPoints OfLogarithm(double exact, DensityPiece[] pieces, double sigma)
    {
        if (pieces.Length == 0)
        {
            return new([Math.Log(exact)], [1]);
        }

        var points = new List<double>();
        var weights = new List<double>();
        foreach (DensityPiece piece in pieces)
        {
            double start = Math.Log(piece.Low);
            double wide = Math.Log(piece.High) - start;
            int panels = (int)Math.Ceiling(wide / Math.Min(MostSigmas * sigma, MostLog));
            double half = wide / panels / 2;
            GaussRule rule = GaussRule.Legendre(Count(half / sigma, 2));
            double slope = (piece.AtHigh - piece.AtLow) / (piece.High - piece.Low);
            for (int i = 0; i < panels; i++)
            {
                double middle = start + (((2 * i) + 1) * half);
                for (int k = 0; k < rule.Points.Length; k++)
                {
                    double log = middle + (half * rule.Points[k]);
                    double value = Math.Exp(log);
                    points.Add(log);
                    weights.Add(half * rule.Weights[k] * value * (piece.AtLow + (slope * (value - piece.Low))));
                }
            }
        }

        return Normalised([.. points], [.. weights]);
    }

    /// <summary>Sums of two spreads that have nothing to do with one another.</summary>
    internal static SpreadPoints Sum(in SpreadPoints one, in SpreadPoints other, double sigma)
    {
        int n = one.Points.Length * other.Points.Length;
        double[] points = new double[n];
        double[] weights = new double[n];
        int at = 0;
        for (int i = 0; i < one.Points.Length; i++)
        {
            for (int k = 0; k < other.Points.Length; k++)
            {
                points[at] = one.Points[i] + other.Points[k];
                weights[at++] = one.Weights[i] * other.Weights[k];
            }
        }

        int few = n == 1 ? 1 : Count((points.Max() - points.Min()) / 2 / sigma, 1);
        if (few >= n || few > MostCondensed)
        {
            return Normalised(points, weights);
        }

        var rule = GaussRule.Condensed(points, weights, few);
        return Normalised(rule.Points, rule.Weights);
    }

    /// <summary>A normal spread.</summary>
    /// <param name="mean">Its mean.</param>
    /// <param name="deviation">Its standard deviation, zero for none.</param>
    /// <param name="shift">The most sigmas of what is averaged that one standard deviation of this moves it by.</param>
    internal static SpreadPoints OfNormal(double mean, double deviation, double shift)
    {
        if (deviation == 0)
        {
            return new([mean], [1]);
        }

        double step = TrapezoidStep / Math.Sqrt(1 + (shift * shift));
        int side = (int)Math.Ceiling(TrapezoidEnd / step);
        double[] points = new double[(2 * side) + 1];
        double[] weights = new double[points.Length];
        for (int i = -side; i <= side; i++)
        {
            points[i + side] = mean + (deviation * i * step);
            weights[i + side] = step * NormalKernel.Density(i * step);
        }

        return Normalised(points, weights);
    }

    // Least n with (half/2)^(2n)/sqrt((2n)!) under what is wanted: the bound of an n-point rule on the normal
    // distribution function over a panel of that half width in sigmas.
    private static int Count(double half, int more)
    {
        double term = 1;
        for (int n = 1; n < 400; n++)
        {
            double square = half * half / 4;
            term *= square / Math.Sqrt(((2.0 * n) - 1) * 2 * n);
            if (term < Wanted && n > 1)
            {
                return n + more;
            }
        }

        return int.MaxValue;
    }

    private static SpreadPoints Normalised(double[] points, double[] weights)
    {
        double total = weights.Sum();
        for (int i = 0; i < weights.Length; i++)
        {
            weights[i] /= total;
        }

        return new SpreadPoints(points, weights);
    }
}
