namespace SacrificialTape.Surfaces;

/// <summary>
/// Complete elliptic integrals by the arithmetic-geometric mean, to the last digits of a double for every modulus from 0
/// to 1. The second one is worked out without subtracting nearly equal numbers, so that a thin branch loses no digit.
/// </summary>
internal static class EllipticKernel
{
    private const double LastDigit = 1e-17;

    /// <summary>E(k): integral of sqrt(1 - k^2 sin^2 t) over a quarter turn. B(k): of cos^2 t / sqrt(1 - k^2 sin^2 t).</summary>
    internal static (double E, double B) Complete(double modulus)
    {
        double kSquared = modulus * modulus;
        double complementSquared = (1 - modulus) * (1 + modulus);
        if (complementSquared <= 0)
        {
            return (1, 1);
        }

        // a, g: the two means; c: half their difference; the sum of 2^(n-1) c^2 from n = 1 on.
        double complement = Math.Sqrt(complementSquared);
        double c = kSquared / (2 * (1 + complement));
        double a = (1 + complement) / 2;
        double g = Math.Sqrt(complement);
        double weight = 1;
        double sum = 0;
        while (c > LastDigit * a)
        {
            sum += weight * c * c;
            weight *= 2;
            double mean = (a + g) / 2;
            g = Math.Sqrt(a * g);
            c = c * c / (4 * mean);
            a = mean;
        }

        double first = Math.PI / (2 * a);
        double b = first * (0.5 - (kSquared > 0 ? sum / kSquared : 0));
        return ((kSquared * b) + (complementSquared * first), b);
    }
}
