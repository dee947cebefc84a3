using System.Globalization;

namespace SacrificialTape.Sweeps.Tests;

/// <summary>How many doubles apart two results are.</summary>
internal static class Ulps
{
    internal static double Between(double one, double other)
    {
        if (one.Equals(other))
        {
            return 0;
        }

        if (!double.IsFinite(one) || !double.IsFinite(other) || Math.Sign(one) * Math.Sign(other) < 0)
        {
            return double.PositiveInfinity;
        }

        return Math.Abs(BitConverter.DoubleToInt64Bits(one) - BitConverter.DoubleToInt64Bits(other));
    }

    internal static void AtMost(double most, double expected, double actual, string what) => Assert.True(
        Between(expected, actual) <= most,
        string.Create(CultureInfo.InvariantCulture, $"{what}: expected {expected:R}, got {actual:R}, {Between(expected, actual)} units apart, at most {most}"));
}
