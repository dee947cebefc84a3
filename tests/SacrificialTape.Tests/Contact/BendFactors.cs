using FsCheck.Xunit;
using MathNet.Numerics.Integration;

namespace SacrificialTape.Tests.Contact;

/// <summary>Factors of a bend laid out along its outside, against a numerical integral.</summary>
[Properties(MaxTest = 200)]
public sealed class BendFactors
{
    [Property]
    public void The_mean_square_is_the_integral_of_the_square(byte radius, byte tube, sbyte from, sbyte wide)
    {
        (double radiusMm, double tubeMm, double a, double b) = Bend(radius, tube, from, wide);
        double factor = UnrolledKernel.MeanSquareFactor(radiusMm, tubeMm, a, b);
        double mean = a == b ? Square(radiusMm, tubeMm, a) : GaussLegendreRule.Integrate(at => Square(radiusMm, tubeMm, at), a, b, 64) / (b - a);
        Near.Equal(Math.Sqrt(mean), factor, 1e-9, absolute: 1e-9);

        // The same from the other end, and hardly another one a hair's breadth further, where the other form begins.
        Near.Equal(factor, UnrolledKernel.MeanSquareFactor(radiusMm, tubeMm, b, a), 1e-9, absolute: 1e-9);
        double at = UnrolledKernel.BendFactor(radiusMm, tubeMm, a / tubeMm * 180 / Math.PI, default(NoSteps));
        foreach (double width in new[] { 1e-9, 1e-7, 9e-7, 1.1e-6, 1e-5 })
        {
            Near.Equal(at, UnrolledKernel.MeanSquareFactor(radiusMm, tubeMm, a - (tubeMm * width / 2), a + (tubeMm * width / 2)), 1e-8, absolute: 1e-5);
        }
    }

    [Property]
    public void What_is_covered_is_the_integral_of_the_factor(byte radius, byte tube, sbyte from, sbyte wide)
    {
        (double radiusMm, double tubeMm, double a, double b) = Bend(radius, tube, from, wide);
        Near.Equal(
            GaussLegendreRule.Integrate(at => Math.Sqrt(Square(radiusMm, tubeMm, at)), a, b, 64),
            UnrolledKernel.CoveredMm(radiusMm, tubeMm, a, b, default(NoSteps)),
            1e-9,
            absolute: 1e-9);
    }

    private static (double RadiusMm, double TubeMm, double A, double B) Bend(byte radius, byte tube, sbyte from, sbyte wide)
    {
        double tubeMm = 20 + tube;
        double a = tubeMm * Math.PI * from / 64;
        return (tubeMm * (1 + (radius / 50.0)), tubeMm, a, a + (tubeMm * Math.PI * wide / 64));
    }

    private static double Square(double radiusMm, double tubeMm, double atMm)
    {
        double factor = (radiusMm + (tubeMm * Math.Cos(atMm / tubeMm))) / (radiusMm + tubeMm);
        return factor * factor;
    }
}
