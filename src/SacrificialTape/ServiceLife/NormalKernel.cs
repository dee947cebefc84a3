namespace SacrificialTape.ServiceLife;

/// <summary>The normal distribution in doubles.</summary>
internal static class NormalKernel
{
    private const double RootOfTwoPi = 2.5066282746310002;

    /// <summary>Share below z: rational approximation of Hart (1968) as given by West (2005), to some 1e-15 absolute.</summary>
    internal static double Below(double z) => BelowAndDensity(z).Below;

    /// <summary>The share below z and the bell at it, for the price of one exponential.</summary>
    internal static (double Below, double Density) BelowAndDensity(double z)
    {
        double x = Math.Abs(z);
        if (x > 37)
        {
            return (z > 0 ? 1 : 0, 0);
        }

        double bell = Math.Exp(-x * x / 2);
        double tail;
        if (x < 7.07106781186547)
        {
            double top = (((((((((((((3.52624965998911e-2 * x) + 0.700383064443688) * x) + 6.37396220353165) * x) + 33.912866078383) * x) + 112.079291497871) * x) + 221.213596169931) * x) + 220.206867912376));
            double bottom = ((((((((((((((8.83883476483184e-2 * x) + 1.75566716318264) * x) + 16.064177579207) * x) + 86.7807322029461) * x) + 296.564248779674) * x) + 637.333633378831) * x) + 793.826512519948) * x) + 440.413735824752);
            tail = bell * top / bottom;
        }
        else
        {
            tail = bell / (x + (1 / (x + (2 / (x + (3 / (x + (4 / (x + 0.65))))))))) / RootOfTwoPi;
        }

        return (z > 0 ? 1 - tail : tail, bell / RootOfTwoPi);
    }

    /// <summary>The bell itself.</summary>
    internal static double Density(double z) => Math.Exp(-z * z / 2) / RootOfTwoPi;

    /// <summary>The z that a share p lies below; p more than 0 and less than 1.</summary>
    /// <remarks>A start by Abramowitz and Stegun 26.2.23, then Halley's steps on the share itself.</remarks>
    internal static double Quantile(double p)
    {
        if (p > 0.5)
        {
            return -Quantile(1 - p);
        }

        double t = Math.Sqrt(-2 * Math.Log(p));
        double z = -(t - ((2.515517 + (t * (0.802853 + (t * 0.010328)))) / (1 + (t * (1.432788 + (t * (0.189269 + (t * 0.001308))))))));
        for (int i = 0; i < 3; i++)
        {
            double step = (Below(z) - p) / Density(z);
            z -= step / (1 + (z * step / 2));
        }

        return z;
    }
}
