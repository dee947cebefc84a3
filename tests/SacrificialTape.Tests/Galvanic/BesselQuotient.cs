using MathNet.Numerics;

namespace SacrificialTape.Tests.Galvanic;

/// <summary>K1/K0, which the library takes from integrals, against a library that takes it from Chebyshev series.</summary>
public sealed class BesselQuotient
{
    [Fact]
    public void It_is_that_of_a_numerical_library()
    {
        // Not its scaled forms, which below 2 do not agree with its own plain ones.
        for (double x = 1e-3; x < 300; x *= 1.37)
        {
            Near.Equal(SpecialFunctions.BesselK1(x) / SpecialFunctions.BesselK0(x), ReachKernel.BesselRatio(x), 1e-13);
        }
    }

    [Fact]
    public void It_tends_to_its_limits()
    {
        // Abramowitz and Stegun 9.6.8, 9.6.9 for small, 9.7.2 for large arguments.
        const double Euler = 0.5772156649015329;
        Near.Equal(1 / (1e-6 * (-Math.Log(0.5e-6) - Euler)), ReachKernel.BesselRatio(1e-6), 1e-10);
        Near.Equal(1 + (1 / 2000.0) - (1 / 8e6), ReachKernel.BesselRatio(1000), 1e-9);
    }
}
