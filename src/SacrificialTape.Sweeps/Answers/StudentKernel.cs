using SacrificialTape.ServiceLife;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>Student's t for whole degrees of freedom: the finite sums of Abramowitz and Stegun 26.7.3 and 26.7.4 (recalled).</summary>
internal static class StudentKernel
{
    // Beyond, the normal quantile with the first corrections of Abramowitz and Stegun 26.7.5 is exact to more digits than matter.
    private const long MostSummed = 400;

    /// <summary>The t that a share lies below; share more than 0 and less than 1, freedom at least 1.</summary>
    internal static double Quantile(double share, long freedom)
    {
        if (share < 0.5)
        {
            return -Quantile(1 - share, freedom);
        }

        double z = NormalKernel.Quantile(share);
        double n = freedom;
        double z2 = z * z;
        double t = z * (1 + ((z2 + 1) / (4 * n)) + (((((5 * z2) + 16) * z2) + 3) / (96 * n * n))
            + (((((((3 * z2) + 19) * z2) + 17) * z2) - 15) / (384 * n * n * n)));
        if (freedom > MostSummed)
        {
            return t;
        }

        // Halving from a bracket that holds it: the share below rises with t.
        double low = 0;
        double high = Math.Max(1, t);
        while (Below(high, freedom) < share)
        {
            high *= 2;
        }

        for (int i = 0; i < 100 && high - low > 1e-14 * high; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Below(middle, freedom) < share ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>The share below t, at least 0.</summary>
    internal static double Below(double t, long freedom)
    {
        double angle = Math.Atan(t / Math.Sqrt(freedom));
        double cosine = Math.Cos(angle);
        bool odd = freedom % 2 == 1;
        double term = odd ? cosine : 1;
        double sum = freedom == 1 ? 0 : term;
        for (long i = odd ? 3 : 2; i <= freedom - 2; i += 2)
        {
            term *= cosine * cosine * (i - 1) / i;
            sum += term;
        }

        double both = odd ? 2 / Math.PI * (angle + (Math.Sin(angle) * sum)) : Math.Sin(angle) * sum;
        return 0.5 + (both / 2);
    }
}
