namespace SacrificialTape.Quantities;

/// <summary>
/// The root of a continuous function between two points where its sign differs: Chandrupatla's mixture of halving and
/// inverse quadratic interpolation. The bracket never lets the root go, so it always ends.
/// </summary>
internal static class BracketedRoot
{
    private const int MostSteps = 200;

    /// <summary>Finds the root to a relative width of the bracket.</summary>
    /// <param name="function">Continuous, of different signs (or zero) at the two ends.</param>
    /// <param name="low">One end.</param>
    /// <param name="high">The other end.</param>
    /// <param name="relative">Width at which to stop, as a share of the root.</param>
    /// <exception cref="ArgumentException">The function has one sign at both ends.</exception>
    internal static double Find(Func<double, double> function, double low, double high, double relative)
    {
        double b = low;
        double a = high;
        double fb = function(b);
        double fa = function(a);
        if (fa == 0)
        {
            return a;
        }

        if (fb != 0 && !(Math.Sign(fa) * Math.Sign(fb) < 0))
        {
            throw new ArgumentException("The function has one sign at both ends of the bracket.", nameof(function));
        }

        double step = 0.5;
        for (int i = 0; i < MostSteps; i++)
        {
            double x = a + (step * (b - a));
            double fx = function(x);
            double c;
            double fc;
            if (Math.Sign(fx) == Math.Sign(fa))
            {
                (c, fc) = (a, fa);
            }
            else
            {
                (c, fc) = (b, fb);
                (b, fb) = (a, fa);
            }

            (a, fa) = (x, fx);
            double best = Math.Abs(fa) < Math.Abs(fb) ? a : b;
            double share = relative * Math.Max(Math.Abs(best), double.Epsilon) / Math.Abs(b - a);
            if (fx == 0 || share > 0.5 || b == a)
            {
                return fx == 0 ? x : best;
            }

            double xi = (a - b) / (c - b);
            double phi = (fa - fb) / (fc - fb);
            bool smooth = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
            step = smooth
                ? (fa / (fb - fa) * (fc / (fb - fc))) + ((c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)))
                : 0.5;
            step = Math.Clamp(step, Math.Min(share, 0.5), Math.Max(1 - share, 0.5));
        }

        return Math.Abs(fa) < Math.Abs(fb) ? a : b;
    }
}
