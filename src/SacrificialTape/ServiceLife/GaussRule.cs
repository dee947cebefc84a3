namespace SacrificialTape.ServiceLife;

/// <summary>Points and weights of a Gauss rule: m of them integrate polynomials up to degree 2 m - 1 exactly.</summary>
/// <remarks>From the recurrence of the orthogonal polynomials by the eigenvalues of its matrix (Golub and Welsch).</remarks>
internal sealed class GaussRule
{
    private const int MostLegendre = 24;

    private static readonly GaussRule?[] Known = new GaussRule?[MostLegendre + 1];

    private GaussRule(double[] points, double[] weights)
    {
        this.Points = points;
        this.Weights = weights;
    }

    internal double[] Points { get; }

    internal double[] Weights { get; }

    /// <summary>On -1 to 1 with weight one.</summary>
    internal static GaussRule Legendre(int count)
    {
        if (Known[count] is { } known)
        {
            return known;
        }

        double[] off = new double[count];
        for (int k = 1; k < count; k++)
        {
            off[k - 1] = k / Math.Sqrt((4.0 * k * k) - 1);
        }

        // Two threads may both make it: they make the same.
        return Known[count] = FromRecurrence(new double[count], off, 2);
    }

    /// <summary>The rule with few points that has the moments of many points with positive weights.</summary>
    internal static GaussRule Condensed(double[] points, double[] weights, int count)
    {
        int n = points.Length;
        double low = points.Min();
        double high = points.Max();
        double middle = (low + high) / 2;
        double half = (high - low) / 2;
        double[] x = new double[n];
        for (int i = 0; i < n; i++)
        {
            x[i] = (points[i] - middle) / half;
        }

        double[] before = new double[n];
        double[] now = new double[n];
        Array.Fill(now, 1);
        double[] diagonal = new double[count];
        double[] off = new double[count];
        double total = weights.Sum();
        double normBefore = 1;
        for (int k = 0; k < count; k++)
        {
            double norm = 0;
            double mean = 0;
            for (int i = 0; i < n; i++)
            {
                double square = weights[i] * now[i] * now[i];
                norm += square;
                mean += square * x[i];
            }

            diagonal[k] = mean / norm;
            double ratio = k == 0 ? 0 : norm / normBefore;
            if (k > 0)
            {
                off[k - 1] = Math.Sqrt(ratio);
            }

            normBefore = norm;
            for (int i = 0; i < n; i++)
            {
                (before[i], now[i]) = (now[i], ((x[i] - diagonal[k]) * now[i]) - (ratio * before[i]));
            }
        }

        GaussRule rule = FromRecurrence(diagonal, off, total);
        for (int i = 0; i < count; i++)
        {
            rule.Points[i] = middle + (half * rule.Points[i]);
        }

        return rule;
    }

    // Implicit QL on a symmetric tridiagonal matrix, with the first component of each eigenvector.
    private static GaussRule FromRecurrence(double[] d, double[] e, double total)
    {
        int n = d.Length;
        double[] first = new double[n];
        first[0] = 1;
        for (int l = 0; l < n; l++)
        {
            while (true)
            {
                int m = l;
                while (m < n - 1 && Math.Abs(e[m]) > 1e-17 * (Math.Abs(d[m]) + Math.Abs(d[m + 1]) + 1e-300))
                {
                    double scale = Math.Abs(d[m]) + Math.Abs(d[m + 1]);
                    if (scale + Math.Abs(e[m]) == scale)
                    {
                        break;
                    }

                    m++;
                }

                if (m == l)
                {
                    break;
                }

                double g = (d[l + 1] - d[l]) / (2 * e[l]);
                double r = Math.Sqrt((g * g) + 1);
                g = d[m] - d[l] + (e[l] / (g + Math.CopySign(r, g)));
                double s = 1;
                double c = 1;
                double p = 0;
                for (int i = m - 1; i >= l; i--)
                {
                    double f = s * e[i];
                    double b = c * e[i];
                    r = Math.Sqrt((f * f) + (g * g));
                    e[i + 1] = r;
                    s = f / r;
                    c = g / r;
                    g = d[i + 1] - p;
                    r = ((d[i] - g) * s) + (2 * c * b);
                    p = s * r;
                    d[i + 1] = g + p;
                    g = (c * r) - b;
                    (first[i], first[i + 1]) = ((c * first[i]) - (s * first[i + 1]), (s * first[i]) + (c * first[i + 1]));
                }

                d[l] -= p;
                e[l] = g;
                e[m] = 0;
            }
        }

        double[] weights = new double[n];
        for (int i = 0; i < n; i++)
        {
            weights[i] = total * first[i] * first[i];
        }

        return new GaussRule(d, weights);
    }
}
