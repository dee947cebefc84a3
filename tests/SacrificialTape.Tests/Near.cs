using System.Globalization;

namespace SacrificialTape.Tests;

/// <summary>Comparison of computed doubles, relative to the larger of the two.</summary>
internal static class Near
{
    internal static bool Same(double expected, double actual, double relative, double absolute = 0) =>
        expected == actual
        || Math.Abs(expected - actual) <= Math.Max(absolute, relative * Math.Max(Math.Abs(expected), Math.Abs(actual)));

    internal static void Equal(double expected, double actual, double relative, string what = "value", double absolute = 0) =>
        Assert.True(Same(expected, actual, relative, absolute), string.Create(
            CultureInfo.InvariantCulture, $"{what}: expected {expected:R}, got {actual:R}"));
}
