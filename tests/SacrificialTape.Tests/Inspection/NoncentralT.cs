using MathNet.Numerics.Distributions;
using static SacrificialTape.Tests.Inspection.InspectionMake;

namespace SacrificialTape.Tests.Inspection;

/// <summary>Student's t, central and not, against a general maths library, against quadrature of another kind, and against values worked out with thirty digits.</summary>
public sealed class NoncentralT
{
    [Fact]
    public void Central_t_agrees_with_a_general_library()
    {
        foreach (double freedom in new[] { 1.0, 2, 2.7, 4, 9, 30, 121.5, 1000, 9999 })
        {
            foreach (double t in new[] { -8.0, -3, -1, -0.2, 0, 0.5, 1, 2, 4, 9 })
            {
                double expected = StudentT.CDF(0, 1, freedom, t);
                Near.Equal(expected, NoncentralTKernel.Above(-t, freedom, 0), 1e-9, $"v {freedom}, t {t}", absolute: 1e-13);
            }

            foreach (double share in new[] { 0.4, 0.1, 0.025, 0.001, 1e-6 })
            {
                double t = NoncentralTKernel.StudentUpper(share, freedom);
                Near.Equal(share, StudentT.CDF(0, 1, freedom, -t), 1e-8, $"v {freedom}, share {share}");
            }
        }

        Assert.Equal(0, NoncentralTKernel.StudentUpper(0.5, 3));
    }

    // n = 2 and large n by arbitrary-precision quadrature over W itself, thirty digits, outside this library.
    [Theory]
    [InlineData(2, 0.9, 0.95, 20.581467624245)]
    [InlineData(2, 0.99, 0.99, 185.61695860321)]
    [InlineData(3, 0.95, 0.95, 7.6559001331533)]
    [InlineData(4, 0.9, 0.95, 4.1619331847297)]
    [InlineData(10, 0.9, 0.95, 2.3546401318291)]
    [InlineData(43, 0.9, 0.99, 1.8739536058512)]
    [InlineData(1000, 0.95, 0.95, 1.7272632696713)]
    [InlineData(10_000, 0.99, 0.95, 2.3583666687802)]
    public void Factors_agree_with_thirty_digits(int count, double coverage, double confidence, double factor) =>
        Near.Equal(factor, new ToleranceFactor(count, Share(coverage), Share(confidence)).Value, 1e-10);

    // Another way round: the chance over chi-squared by its density from a general library, and Simpson's rule.
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(30)]
    [InlineData(250)]
    [InlineData(3000)]
    public void A_factor_reaches_its_confidence_by_another_quadrature(int count)
    {
        foreach ((double coverage, double confidence) in new[] { (0.5, 0.95), (0.9, 0.5), (0.9, 0.95), (0.99, 0.99), (0.9999, 0.6), (0.6, 0.9999) })
        {
            double factor = new ToleranceFactor(count, Share(coverage), Share(confidence)).Value;
            double z = Normal.InvCDF(0, 1, coverage);
            int freedom = count - 1;
            double spread = 1 / Math.Sqrt(2.0 * freedom);

            // w from 0: the density is that of the root of chi-squared over its freedom, from its logarithm.
            double Term(double w) => w <= 0
                ? (freedom == 1 ? Math.Sqrt(2 / Math.PI) * Normal.CDF(0, 1, -Math.Sqrt(count) * z) : 0)
                : 2 * freedom * w * Math.Exp(ChiSquared.PDFLn(freedom, freedom * w * w)) * Normal.CDF(0, 1, Math.Sqrt(count) * ((factor * w) - z));
            double low = Math.Max(0, 1 - (14 * spread));
            // By w = v^4: with two readings what counts may lie at w of a ten-thousandth.
            double chance = Simpson(v => 4 * v * v * v * Term(v * v * v * v), Math.Sqrt(Math.Sqrt(low)), Math.Sqrt(Math.Sqrt(1 + (14 * spread))), 40_000);
            Near.Equal(confidence, chance, 1e-8, $"n {count}, {coverage}, {confidence}");
        }
    }

    [Fact]
    public void A_factor_falls_with_readings_and_rises_with_coverage_and_confidence()
    {
        int[] counts = [2, 3, 4, 6, 10, 20, 50, 200, 1000, 10_000];
        double[] shares = [0.5, 0.7, 0.9, 0.95, 0.99, 0.9999];
        foreach (double share in shares)
        {
            double[] byCount = [.. counts.Select(count => new ToleranceFactor(count, Share(share), Share(0.9)).Value)];
            Assert.Equal(byCount.OrderDescending(), byCount);
        }

        foreach (int count in counts)
        {
            double[] byCoverage = [.. shares.Select(share => new ToleranceFactor(count, Share(share), Share(0.9)).Value)];
            double[] byConfidence = [.. shares.Select(share => new ToleranceFactor(count, Share(0.9), Share(share)).Value)];
            Assert.Equal(byCoverage.Order(), byCoverage);
            Assert.Equal(byConfidence.Order(), byConfidence);
        }

        // With very many readings nothing but the share itself is left.
        Near.Equal(Normal.InvCDF(0, 1, 0.95), new ToleranceFactor(10_000, Share(0.95), Share(0.5)).Value, 1e-4);
        Assert.Equal(0, new ToleranceFactor(9, Share(0.5), Share(0.5)).Value, 1e-12);
    }

    [Fact]
    public void Bad_arguments_are_refused()
    {
        Errors.Refused(static () => new ToleranceFactor(1, Share(0.9), Share(0.95)), "readings", "one reading has no scatter");
        Errors.Refused(static () => new ToleranceFactor(10_001, Share(0.9), Share(0.95)), "readings");
        Errors.Refused(static () => new ToleranceFactor(5, Share(0.4), Share(0.95)), "coverage", "write 0.95 for 95 %");
        Errors.Refused(static () => new ToleranceFactor(5, Share(0.9), Share(1)), "confidence");
    }

    private static double Simpson(Func<double, double> function, double low, double high, int pieces)
    {
        double step = (high - low) / pieces;
        double sum = function(low) + function(high);
        for (int i = 1; i < pieces; i++)
        {
            sum += (i % 2 == 1 ? 4 : 2) * function(low + (i * step));
        }

        return sum * step / 3;
    }
}
