using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The normal distribution in doubles.</summary>
internal static class NormalKernel
{
    private const double RootOfTwoPi = 2.5066282746310002;
    private const double Straight = 7.07106781186547;
    private const double Nothing = 37;

    // Where the quantile changes from one fraction to the next: |p - 1/2| and sqrt(-ln p).
    private const double CentralHalf = 0.425;
    private const double CentralSquare = 0.180625;
    private const double NearShift = 1.6;
    private const double TailFrom = 5;

    private static ReadOnlySpan<double> CentralAbove =>
    [
        2.5090809287301226727e3, 3.3430575583588128105e4, 6.7265770927008700853e4, 4.5921953931549871457e4,
        1.3731693765509461125e4, 1.9715909503065514427e3, 1.3314166789178437745e2, 3.3871328727963666080e0,
    ];

    private static ReadOnlySpan<double> CentralBelow =>
    [
        5.2264952788528545610e3, 2.8729085735721942674e4, 3.9307895800092710610e4, 2.1213794301586595867e4,
        5.3941960214247511077e3, 6.8718700749205790830e2, 4.2313330701600911252e1, 1,
    ];

    private static ReadOnlySpan<double> NearAbove =>
    [
        7.74545014278341407640e-4, 2.27238449892691845833e-2, 2.41780725177450611770e-1, 1.27045825245236838258,
        3.64784832476320460504, 5.76949722146069140550, 4.63033784615654529590, 1.42343711074968357734,
    ];

    private static ReadOnlySpan<double> NearBelow =>
    [
        1.05075007164441684324e-9, 5.47593808499534494600e-4, 1.51986665636164571966e-2, 1.48103976427480074590e-1,
        6.89767334985100004550e-1, 1.67638483018380384940, 2.05319162663775882187, 1,
    ];

    private static ReadOnlySpan<double> FarAbove =>
    [
        2.01033439929228813265e-7, 2.71155556874348757815e-5, 1.24266094738807843860e-3, 2.65321895265761230930e-2,
        2.96560571828504891230e-1, 1.78482653991729133580, 5.46378491116411436990, 6.65790464350110377720,
    ];

    private static ReadOnlySpan<double> FarBelow =>
    [
        2.04426310338993978564e-15, 1.42151175831644588870e-7, 1.84631831751005468180e-5, 7.86869131145613259100e-4,
        1.48753612908506148525e-2, 1.36929880922735805310e-1, 5.99832206555887937690e-1, 1,
    ];

    /// <summary>Share below z: rational approximation of Hart (1968) as given by West (2005), to some 1e-15 absolute.</summary>
    internal static double Below(double z) => BelowAndDensity(z).Below;

    /// <summary>The share below z and the bell at it, for the price of one exponential.</summary>
    internal static (double Below, double Density) BelowAndDensity(double z)
    {
        double x = Math.Abs(z);
        if (x > Nothing)
        {
            return (z > 0 ? 1 : 0, 0);
        }

        double bell = Math.Exp(-x * x / 2);
        double tail;
        if (x < Straight)
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

    /// <summary>The share below z in lanes, the same fractions.</summary>
    internal static TLanes Below<TLanes>(TLanes z)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes x = TLanes.Abs(z);
        TLanes bell = TLanes.Exp(-0.5 * x * x);
        TLanes top = ((((((((((((3.52624965998911e-2 * x) + 0.700383064443688) * x) + 6.37396220353165) * x) + 33.912866078383) * x) + 112.079291497871) * x) + 221.213596169931) * x) + 220.206867912376);
        TLanes bottom = (((((((((((((8.83883476483184e-2 * x) + 1.75566716318264) * x) + 16.064177579207) * x) + 86.7807322029461) * x) + 296.564248779674) * x) + 637.333633378831) * x) + 793.826512519948) * x) + 440.413735824752;
        TLanes tail = bell * top / bottom;
        TLanes far = x >= Straight;
        if (TLanes.Any(far))
        {
            TLanes slow = bell / (x + (1 / (x + (2 / (x + (3 / (x + (4 / (x + 0.65))))))))) / RootOfTwoPi;
            tail = TLanes.Where(far, TLanes.Where(x > Nothing, 0, slow), tail);
        }

        return TLanes.Where(z > 0, 1 - tail, tail);
    }

    /// <summary>The bell itself.</summary>
    internal static double Density(double z) => Math.Exp(-z * z / 2) / RootOfTwoPi;

    /// <summary>The z that a share p lies below; p more than 0 and less than 1.</summary>
    /// <remarks>
    /// M. J. Wichura, "Algorithm AS 241: the percentage points of the normal distribution", Appl. Stat. 37 (1988) 477-484, the
    /// form of 16 digits: coefficients read second hand in several public copies that agree, and their mantissas add up to the sums
    /// printed with them. Within 5 units in the last place (held against roots in 60 digits).
    /// </remarks>
    internal static double Quantile(double p)
    {
        double middle = p - 0.5;
        if (Math.Abs(middle) <= CentralHalf)
        {
            return middle * Fraction(CentralAbove, CentralBelow, CentralSquare - (middle * middle));
        }

        double t = Math.Sqrt(-Math.Log(Math.Min(p, 1 - p)));
        double z = t <= TailFrom ? Fraction(NearAbove, NearBelow, t - NearShift) : Fraction(FarAbove, FarBelow, t - TailFrom);
        return middle < 0 ? -z : z;
    }

    /// <summary>The same in lanes, within 5 units in the last place too; not a number where a share is not inside 0 to 1.</summary>
    internal static TLanes Quantile<TLanes>(TLanes p)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes middle = p - 0.5;
        TLanes z = middle * Fraction(CentralAbove, CentralBelow, CentralSquare - (middle * middle));
        TLanes outside = TLanes.Abs(middle) > CentralHalf;
        if (TLanes.Any(outside))
        {
            TLanes t = TLanes.Sqrt(-1 * TLanes.Log(TLanes.Min(p, 1 - p)));
            TLanes tail = Fraction(NearAbove, NearBelow, t - NearShift);
            TLanes far = t > TailFrom;
            if (TLanes.Any(far))
            {
                tail = TLanes.Where(far, Fraction(FarAbove, FarBelow, t - TailFrom), tail);
            }

            z = TLanes.Where(outside, TLanes.Where(middle < 0, -1 * tail, tail), z);
        }

        return TLanes.Where((p > 0) & (p < 1), z, double.NaN);
    }

    // Both polynomials of a fraction, the highest power first.
    private static double Fraction(ReadOnlySpan<double> above, ReadOnlySpan<double> below, double x)
    {
        double top = above[0];
        double bottom = below[0];
        for (int i = 1; i < above.Length; i++)
        {
            top = (top * x) + above[i];
            bottom = (bottom * x) + below[i];
        }

        return top / bottom;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static TLanes Fraction<TLanes>(ReadOnlySpan<double> above, ReadOnlySpan<double> below, TLanes x)
        where TLanes : struct, ILanes<TLanes>
    {
        TLanes top = above[0];
        TLanes bottom = below[0];
        for (int i = 1; i < above.Length; i++)
        {
            top = (top * x) + above[i];
            bottom = (bottom * x) + below[i];
        }

        return top / bottom;
    }
}
