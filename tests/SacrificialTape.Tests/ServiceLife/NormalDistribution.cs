using MathNet.Numerics.Distributions;

namespace SacrificialTape.Tests.ServiceLife;

/// <summary>The normal distribution against a general maths library.</summary>
public sealed class NormalDistribution
{
    [Fact]
    public void Share_below_agrees_far_into_both_tails()
    {
        for (double z = -12; z <= 12; z += 0.0137)
        {
            // Absolute, as the coefficients were made for; far out a share under 1e-11 keeps seven digits.
            Near.Equal(Normal.CDF(0, 1, z), NormalKernel.Below(z), 0, absolute: 5e-15);
            Near.Equal(Normal.CDF(0, 1, z), NormalKernel.Below(z), 1e-7);
        }

        Assert.Equal(0, NormalKernel.Below(-40));
        Assert.Equal(1, NormalKernel.Below(40));
        Assert.Equal(0, NormalKernel.Below(double.NegativeInfinity));
        Assert.Equal(1, NormalKernel.Below(double.PositiveInfinity));
    }

    [Fact]
    public void Lanes_agree_far_into_both_tails()
    {
        for (double z = -12; z <= 12; z += 0.0137)
        {
            Near.Equal(Normal.CDF(0, 1, z), NormalKernel.Below<FourLanes>(z).First, 0, absolute: 5e-15);
            Near.Equal(Normal.CDF(0, 1, z), NormalKernel.Below<FourLanes>(z).First, 1e-7);
        }

        Assert.Equal(0, NormalKernel.Below<FourLanes>(-40).First);
        Assert.Equal(1, NormalKernel.Below<FourLanes>(40).First);
        foreach (double p in new[] { 1e-300, 1e-40, 1e-12, 1e-6, 0.001, 0.02, 0.0749, 0.0751, 0.3, 0.5, 0.77, 0.9249, 0.9251, 0.975, 0.999999 })
        {
            Near.Equal(NormalKernel.Quantile(p), NormalKernel.Quantile<FourLanes>(p).First, 1e-14, absolute: 1e-15);
        }

        Assert.All(new[] { 0, 1, -0.1, 1.1, double.NaN }, static p => Assert.Equal(double.NaN, NormalKernel.Quantile<FourLanes>(p).First));
    }

    [Fact]
    public void Quantile_agrees_and_turns_the_share_round()
    {
        foreach (double p in new[] { 1e-12, 1e-6, 0.001, 0.02, 0.1, 0.3, 0.5, 0.77, 0.9, 0.975, 0.999999 })
        {
            Near.Equal(Normal.InvCDF(0, 1, p), NormalKernel.Quantile(p), 1e-10, absolute: 1e-14);

            // It is the share that keeps 5e-15 and seven digits only, see above; the quantile keeps all.
            Near.Equal(p, NormalKernel.Below(NormalKernel.Quantile(p)), 0, absolute: 5e-15);
            Near.Equal(p, NormalKernel.Below(NormalKernel.Quantile(p)), 1e-7);
        }
    }

    [Fact]
    public void Gauss_rules_agree()
    {
        foreach (int count in new[] { 2, 3, 7, 12, 24 })
        {
            var oracle = new MathNet.Numerics.Integration.GaussLegendreRule(-1, 1, count);
            GaussRule rule = GaussRule.Legendre(count);
            (double Point, double Weight)[] sorted = [.. rule.Points.Zip(rule.Weights).OrderBy(static one => one.First)];
            for (int i = 0; i < count; i++)
            {
                Near.Equal(oracle.Abscissas.Order().ElementAt(i), sorted[i].Point, 1e-13, absolute: 1e-14);
            }

            // Any smooth function: the points and the weights together.
            double integral = sorted.Sum(static one => one.Weight * Math.Cos(one.Point));
            Near.Equal(2 * Math.Sin(1), integral, count < 7 ? 0.02 : 1e-13);
        }
    }

    [Fact]
    public void A_condensed_rule_keeps_the_moments()
    {
        double[] points = [.. Enumerable.Range(0, 300).Select(static i => 3 + Math.Sin(i * 0.7) + (i * 0.001))];
        double[] weights = [.. Enumerable.Range(0, 300).Select(static i => 1.0 + (i % 7))];
        var few = GaussRule.Condensed(points, weights, 9);
        for (int power = 0; power < 18; power++)
        {
            Near.Equal(Moment(points, weights, power), Moment(few.Points, few.Weights, power), 1e-12);
        }

        Assert.All(few.Weights, static weight => Assert.True(weight > 0));
    }

    private static double Moment(double[] points, double[] weights, int power) =>
        points.Zip(weights).Sum(one => one.Second * Math.Pow(one.First / 3, power));
}
