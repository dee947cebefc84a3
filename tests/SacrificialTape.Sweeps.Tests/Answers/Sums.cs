using System.Numerics;
using FsCheck;
using FsCheck.Xunit;
using SacrificialTape.Sweeps.Answers;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>Sums without rounding against sums of whole numbers.</summary>
public sealed class Sums
{
    private static readonly double[] Awkward =
    [
        1, -1, 0, -0.0, 0.1, 1e300, -1e300, 1e-300, double.Epsilon, -double.Epsilon, double.MaxValue, -double.MaxValue, 3e-160, Math.PI, 1e16, 1,
    ];

    [Fact]
    public void A_sum_of_numbers_of_every_size_loses_nothing()
    {
        var sum = new ExactSum();
        BigInteger expected = 0;
        foreach (double value in Awkward)
        {
            sum.Add(value);
            expected += Whole(value) << 1074;
            foreach (double other in Awkward)
            {
                sum.AddProduct(value, other);
                expected += Whole(value) * Whole(other);
            }
        }

        Assert.Equal(expected, sum.Whole());
    }

    [Property(MaxTest = 300)]
    public void Any_order_and_any_joining_give_the_same_whole_number(NormalFloat[] given, int seed)
    {
        double[] values = [.. given.Select(static one => one.Get)];
        var whole = new ExactSum();
        var left = new ExactSum();
        var right = new ExactSum();
        foreach (double value in values)
        {
            whole.Add(value);
        }

        var random = new Random(seed);
        random.Shuffle(values);
        foreach (double value in values)
        {
            (random.Next(2) == 0 ? left : right).Add(value);
        }

        right.Add(left);
        Assert.Equal(whole.Whole(), right.Whole());
        Assert.Equal(values.Aggregate(BigInteger.Zero, static (sum, value) => sum + (Whole(value) << 1074)), whole.Whole());
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(0.1)]
    [InlineData(-123456.789)]
    [InlineData(1e-300)]
    [InlineData(double.MaxValue)]
    public void One_number_comes_back(double value)
    {
        var sum = new ExactSum();
        sum.Add(value);
        Assert.Equal(value, ExactSum.Ratio(sum.Whole(), 1, ExactSum.LeastExponent));
    }

    // A double as a whole number of 2^-1074.
    private static BigInteger Whole(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        int exponent = (int)((bits >> 52) & 0x7FF);
        BigInteger mantissa = bits & 0xF_FFFF_FFFF_FFFF;
        BigInteger whole = exponent == 0 ? mantissa : (mantissa + (1L << 52)) << (exponent - 1);
        return bits < 0 ? -whole : whole;
    }
}
