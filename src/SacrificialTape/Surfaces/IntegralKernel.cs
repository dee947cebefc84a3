namespace SacrificialTape.Surfaces;

/// <summary>
/// Integrals of smooth functions by Gauss's five-point rule, the interval halved wherever both halves together do not yet
/// agree with the whole to 1e-13 of the integral. A root's steep end costs some thirty halvings and no digits.
/// </summary>
internal static class IntegralKernel
{
    private const double Agreement = 1e-13;
    private const int MostHalvings = 44;
    private const double Inner = 0.5384693101056830910;
    private const double Outer = 0.9061798459386639928;
    private const double AtMiddle = 0.5688888888888888889;
    private const double AtInner = 0.4786286704993664680;
    private const double AtOuter = 0.2369268850561890875;

    internal static double Of(Func<double, double> function, double from, double to)
    {
        double whole = Five(function, from, to);
        return from == to ? 0 : Halved(function, from, to, whole, Math.Abs(whole) * Agreement, MostHalvings);
    }

    private static double Halved(Func<double, double> function, double from, double to, double whole, double allowed, int halvings)
    {
        double middle = (from + to) / 2;
        double left = Five(function, from, middle);
        double right = Five(function, middle, to);
        return halvings == 0 || Math.Abs(left + right - whole) <= allowed
            ? left + right
            : Halved(function, from, middle, left, allowed, halvings - 1) + Halved(function, middle, to, right, allowed, halvings - 1);
    }

    private static double Five(Func<double, double> function, double from, double to)
    {
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        return half * ((AtMiddle * function(middle))
            + (AtInner * (function(middle - (half * Inner)) + function(middle + (half * Inner))))
            + (AtOuter * (function(middle - (half * Outer)) + function(middle + (half * Outer)))));
    }
}
