using FsCheck;
using FsCheck.Xunit;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Tests.Sampling;

/// <summary>The normal quantile in rows: against published and precise values, and the same bits wherever a share stands.</summary>
public sealed class NormalQuantiles
{
    private const double Most = 5;

    // Roots of ln(erfc(-z/sqrt(2))/2) = ln(p) in 60 digits by mpmath 1.3 (a general library), p the double itself.
    public static TheoryData<double, double> Precise => new()
    {
        { 0.0625, -1.5341205443525463117 },
        { 0.0078125, -2.4175590162365050618 },
        { 0.0009765625, -3.0972690781987844624 },
        { 0.0001220703125, -3.6683292851213230192 },
        { 1.52587890625e-05, -4.169569323349105755 },
        { 1.9073486328125e-06, -4.6212310014992471566 },
        { 2.384185791015625e-07, -5.0354059694639271537 },
        { 2.9802322387695312e-08, -5.4199831749168679884 },
        { 3.725290298461914e-09, -5.7804393244789342267 },
        { 4.656612873077393e-10, -6.1207562859719408104 },
        { 5.820766091346741e-11, -6.4439345265385642153 },
        { 7.275957614183426e-12, -6.7523004314070149646 },
        { 9.094947017729282e-13, -7.0477002566644087254 },
        { 1.1368683772161603e-13, -7.3316279026493270887 },
        { 1.4210854715202004e-14, -7.6053121319487489546 },
        { 1.7763568394002505e-15, -7.869777910570139124 },
        { 2.220446049250313e-16, -8.1258906647019068585 },
        { 1e-20, -9.2623400897984075796 },
        { 1e-50, -14.933337534788488981 },
        { 1e-100, -21.273453560965324294 },
        { 1e-300, -37.047096299361199237 },
        { 0.015625, -2.153874694061456213 },
        { 0.109375, -1.2298587592165891142 },
        { 0.15625, -1.0099901692495820954 },
        { 0.203125, -0.83051087820539911764 },
        { 0.25, -0.6744897501960817432 },
        { 0.296875, -0.53340970624128055743 },
        { 0.34375, -0.40225006532172529122 },
        { 0.390625, -0.27769043982157674408 },
        { 0.4375, -0.15731068461017069552 },
        { 0.484375, -0.039176085503097629566 },
        { 0.546875, 0.11776987457909529604 },
        { 0.59375, 0.23720210932878769112 },
        { 0.640625, 0.36012989178956941484 },
        { 0.6875, 0.48877641111466949891 },
        { 0.734375, 0.62609901234642118704 },
        { 0.78125, 0.7764217611479276183 },
        { 0.828125, 0.94678175630104565148 },
        { 0.875, 1.1503493803760081783 },
        { 0.921875, 1.4177971379962673391 },
        { 0.96875, 1.8627318674216514555 },
        { 0.075, -1.4395314709384559349 },
        { 0.07499999, -1.4395315415821680327 },
        { 0.0750000001, -1.4395314702320187914 },
        { 0.925, 1.4395314709384562291 },
        { 0.9250001, 1.4395321773759004884 },
        { 0.49999999, -2.5066282733116223143e-8 },
        { 0.5000001, 2.5066282733116483012e-7 },
        { 1.3887943864964021e-11, -6.6579046435011035837 },
        { 1.38e-11, -6.6588385028507655283 },
        { 1.4e-11, -6.6567230915181836356 },
        { 0.9999999999999999, 8.2095361516013868556 },
        { 0.9999999999990905, 7.0477002566644087254 },
        { 0.9999990463256836, 4.763001034267813957 },
        { 0.975, 1.9599639845400538556 },
        { 0.95, 1.6448536269514722843 },
        { 0.99, 2.3263478740408407676 },
        { 0.999, 3.0902323061678132778 },
    };

    // Check values that stand with Algorithm AS 241 (recalled; the last digits agree with the roots in 60 digits above), and the
    // quantiles that every table prints.
    [Theory]
    [InlineData(0.25, -0.6744897501960817)]
    [InlineData(0.001, -3.090232306167814)]
    [InlineData(1e-20, -9.262340089798408)]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.95, 1.644853626951472)]
    [InlineData(0.995, 2.575829303548901)]
    public void Printed_quantiles(double share, double z)
    {
        Assert.Equal(z, Rows(share), 1e-15 * Math.Abs(z) * 2);
        Assert.Equal(z, NormalKernel.Quantile(share), 1e-15 * Math.Abs(z) * 2);
    }

    [Theory]
    [MemberData(nameof(Precise))]
    public void Within_five_units_of_precise_values(double share, double z)
    {
        Ulps.AtMost(Most, z, Rows(share), $"rows at {share}");
        Ulps.AtMost(Most, z, NormalKernel.Quantile(share), $"scalar at {share}");
    }

    [Property(MaxTest = 2000)]
    public void Rows_and_the_scalar_form_agree_and_the_share_returns(PositiveInt some, NonNegativeInt far)
    {
        double share = ((some.Get * 7919L % 99_998) + 1) / 100_000.0 * Math.Pow(2, -(far.Get % 40));
        double z = Rows(share);
        Ulps.AtMost(Most, NormalKernel.Quantile(share), z, $"{share}");

        // The share below keeps 5e-15 absolute and seven digits, as its coefficients were made for.
        Assert.Equal(share, NormalKernel.Below(z), Math.Min(5e-15, 1e-7 * share));

        // One less a share of a power of two is exact, and its quantile the same with the other sign.
        double mirrored = 1 - share;
        if (1 - mirrored == share)
        {
            Assert.Equal(-z, Rows(mirrored));
        }
    }

    [Fact]
    public void A_quantile_rises_with_its_share()
    {
        const int Count = 40_000;
        double[] shares = [.. Enumerable.Range(1, Count).Select(static i => i / (Count + 1.0))];

        // Where one fraction takes over from the next as well.
        foreach (double near in new[] { 0.075, 0.925, Math.Exp(-25) })
        {
            for (int i = -500; i <= 500; i++)
            {
                shares = [.. shares, near * (1 + (i * 1e-9))];
            }
        }

        Array.Sort(shares);
        double[] z = [.. shares];
        RowLoop.InPlace(new NormalDraws(z, 0, 1), z.Length);
        for (int i = 1; i < z.Length; i++)
        {
            Assert.True(z[i] >= z[i - 1], $"{shares[i - 1]:R} and {shares[i]:R}");
        }
    }

    [Fact]
    public void Outside_0_to_1_there_is_none()
    {
        double[] shares = [0, 1, -0.1, 1.1, double.NaN, double.PositiveInfinity];
        RowLoop.InPlace(new NormalDraws(shares, 0, 1), shares.Length);
        Assert.All(shares, static z => Assert.True(double.IsNaN(z)));
    }

    [Fact]
    public void A_value_has_the_same_bits_at_every_width_and_wherever_it_stands()
    {
        double[] shares = Shares(1003);
        double[] two = Drawn<TwoLanes>(shares);
        Assert.Equal(two, Drawn<FourLanes>(shares));
        Assert.Equal(two, Drawn<EightLanes>(shares));
        foreach (DistributedValues values in new DistributedValues[]
        {
            new NormalValues(5, 2), new LogNormalValues(3, 0.4), new TruncatedValues(new NormalValues(5, 2), 1, 6), new TruncatedValues(new LogNormalValues(3, 0.4), 2, 9),
        })
        {
            double[] whole = [.. shares];
            values.Draw(whole);
            for (int length = 1; length < 12; length += 3)
            {
                for (int start = 0; start + length <= shares.Length; start += length)
                {
                    double[] part = shares[start..(start + length)];
                    values.Draw(part);
                    Assert.Equal(whole[start..(start + length)], part);
                }
            }

            Assert.Equal(whole, shares.Select(values.At));
        }
    }

    // The same fractions in lanes and alone; one exponential of a vector may be a digit off.
    [Fact]
    public void Shares_below_agree_with_the_scalar_form_and_return_far_into_both_tails()
    {
        double[] z = [.. Enumerable.Range(-4000, 8001).Select(static i => i * 0.00973)];
        double[] share = [.. z];
        RowLoop.InPlace(new NormalShares(share), share.Length);
        for (int i = 0; i < z.Length; i++)
        {
            double scalar = Math.Clamp(NormalKernel.Below(z[i]), 1e-300, 1 - Math.Pow(2, -53));
            Ulps.AtMost(4, scalar, share[i], $"{z[i]}");
        }

        double[] two = [.. z];
        double[] eight = [.. z];
        RowLoop.InPlace<NormalShares, TwoLanes>(new NormalShares(two), z.Length);
        RowLoop.InPlace<NormalShares, EightLanes>(new NormalShares(eight), z.Length);
        Assert.Equal(share, two);
        Assert.Equal(share, eight);
    }

    private static double Rows(double share)
    {
        RowLoop.InPlace(new NormalDraws(new Span<double>(ref share), 0, 1), 1);
        return share;
    }

    private static double[] Drawn<TLanes>(double[] shares)
        where TLanes : struct, ILanes<TLanes>
    {
        double[] all = [.. shares];
        RowLoop.InPlace<NormalDraws, TLanes>(new NormalDraws(all, 5, 2), all.Length);
        return all;
    }

    private static double[] Shares(int count) => [.. Enumerable.Range(1, count).Select(static i => i % 5 == 0
        ? Math.Pow(2, -(i % 52)) * 0.7
        : (i * 0.6180339887498949) % 1)];
}
