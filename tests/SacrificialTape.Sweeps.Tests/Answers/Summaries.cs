using FsCheck;
using FsCheck.Xunit;
using SacrificialTape.Sweeps.Answers;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>Moments, histograms and exceedances.</summary>
public sealed class Summaries
{
    // 9 numbers made so that a running sum of squares loses all digits: 1e9 + 1 to 9; variance of 1 to 9 is 60/8.
    [Fact]
    public void A_large_mean_takes_no_digit_from_a_small_variance()
    {
        var moments = new Moments();
        moments.Add(0, [.. Enumerable.Range(1, 9).Select(static i => 1e9 + i)]);
        Assert.Equal(1e9 + 5, moments.Mean);
        Assert.Equal(7.5, moments.Variance);
        Assert.Equal(Math.Sqrt(7.5), moments.Deviation);
        Assert.Equal(Math.Sqrt(7.5 / 9), moments.StandardError);
        Assert.Equal((1e9 + 1, 1e9 + 9), (moments.Least, moments.Greatest));
    }

    [Fact]
    public void What_is_no_finite_number_is_counted_apart()
    {
        var moments = new Moments();
        moments.Add(0, [2, double.NaN, 4, double.PositiveInfinity, double.NaN]);
        Assert.Equal((2, 2, 1), (moments.Count, moments.NotANumber, moments.Infinite));
        Assert.Equal((3, 2, 2, 4), (moments.Mean, moments.Variance, moments.Least, moments.Greatest));
        Assert.True(double.IsNaN(new Moments().Mean) && double.IsNaN(new Moments().Variance) && double.IsNaN(new Moments().Least));
    }

    [Property(MaxTest = 200)]
    public void Parts_joined_are_the_whole_bit_for_bit(NormalFloat[] given, byte cut, byte turn)
    {
        double[] values = [.. given.Select(static one => one.Get), double.NaN, double.PositiveInfinity, 3];
        Summary[] kinds = [new Moments(), new Histogram(-10, 10, 7), new Exceedance(-1, 0, 5)];
        foreach (Summary kind in kinds)
        {
            Summary whole = kind.Fresh();
            whole.Add(0, values);
            int at = cut % (values.Length + 1);
            Summary one = kind.Fresh();
            Summary other = kind.Fresh();
            one.Add(0, values.AsSpan(0, at));
            other.Add(at, values.AsSpan(at));
            (one, other) = turn % 2 == 0 ? (one, other) : (other, one);
            one.Join(other);
            Assert.Equal(whole.ToString(), one.ToString());
            if (whole is Moments all && one is Moments joined)
            {
                Assert.Equal((all.Mean, all.Variance, all.Least, all.Greatest), (joined.Mean, joined.Variance, joined.Least, joined.Greatest));
            }
        }
    }

    [Property(MaxTest = 200)]
    public void A_quantile_lies_in_its_bin(NonEmptyArray<NormalFloat> given, byte some)
    {
        double[] values = [.. given.Get.Select(static one => Math.IEEERemainder(one.Get, 12))];
        double share = (1 + (some % 100)) / 100.0;
        var histogram = new Histogram(-5, 5, 20);
        histogram.Add(0, values);
        Array.Sort(values);
        double exact = values[Math.Max(0, (int)Math.Ceiling((share * values.Length) - 1e-9) - 1)];
        QuantileBounds bounds = histogram.Quantile(share);
        Assert.True(bounds.Low <= exact && exact < bounds.High, $"{exact} is not in {bounds}");
        Assert.True(double.IsInfinity(bounds.High - bounds.Low) || bounds.High - bounds.Low <= 0.5 + 1e-12);
    }

    [Fact]
    public void Bins_hold_their_lower_edge_and_what_lies_outside_is_counted()
    {
        var histogram = new Histogram(1, 100, 2, RangeSpacing.Logarithmic);
        Assert.Equal(10, histogram.Edges[1], 1e-13);
        histogram.Add(0, [0.5, 1, 9.99, histogram.Edges[1], 99, 100, double.PositiveInfinity, double.NaN]);
        Assert.Equal([2L, 2L], histogram.Counts);
        Assert.Equal((1, 2, 1, 7), (histogram.BelowAll, histogram.AboveAll, histogram.NotANumber, histogram.Count));
        Assert.Equal(new QuantileBounds(100, double.PositiveInfinity), histogram.Quantile(1));
        Assert.Equal(new QuantileBounds(double.NegativeInfinity, 1), histogram.Quantile(0.1));
        Assert.Equal(5.5, histogram.Quantile(0.4).Middle, 1e-13);
        Assert.Throws<InvalidOperationException>(static () => new Histogram(0, 1, 1).Quantile(0.5));
        Assert.Throws<ArgumentOutOfRangeException>("share", () => histogram.Quantile(0));
        Assert.Contains("write 0.05 for 5 %", Assert.Throws<ArgumentOutOfRangeException>("share", () => histogram.Quantile(5.0)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("bins", static () => new Histogram(0, 1, 0));
    }

    [Fact]
    public void Thresholds_are_exceeded_only_by_more()
    {
        var years = new Exceedance(10, 20);
        years.Add(0, [10, 15, 20, 25, double.PositiveInfinity, double.NaN]);
        Assert.Equal([4L, 2L], years.Above);
        Assert.Equal((5, 1, 0.4), (years.Count, years.NotANumber, years.Share(1)));
        Assert.Throws<ArgumentException>("thresholds", static () => new Exceedance(2, 1));
        Assert.Throws<ArgumentException>("thresholds", static () => new Exceedance());
    }

    [Fact]
    public void What_does_not_belong_together_does_not_join()
    {
        Assert.Throws<ArgumentException>("other", static () => new Moments().Join(new Exceedance(1)));
        Assert.Throws<ArgumentException>("other", static () => new Histogram(0, 1, 2).Join(new Histogram(0, 1, 3)));
        Assert.Throws<ArgumentException>("other", static () => new Exceedance(1).Join(new Exceedance(2)));
    }
}
