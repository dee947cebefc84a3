using SacrificialTape.Sweeps.Answers;

namespace SacrificialTape.Sweeps.Tests.Answers;

/// <summary>Student's t against printed tables and closed forms.</summary>
public sealed class Students
{
    // As printed in any table of Student's t (for instance NIST handbook 1.3.6.7.2), and to more digits by closed forms: one degree of
    // freedom tan(pi (p - 1/2)), two (2 p - 1)/sqrt(2 p (1 - p)).
    [Theory]
    [InlineData(0.975, 1, 12.706)]
    [InlineData(0.975, 2, 4.303)]
    [InlineData(0.975, 5, 2.571)]
    [InlineData(0.95, 10, 1.812)]
    [InlineData(0.95, 31, 1.696)]
    [InlineData(0.975, 31, 2.040)]
    [InlineData(0.995, 31, 2.744)]
    [InlineData(0.975, 100, 1.984)]
    public void Printed_quantiles(double share, long freedom, double t) => Assert.Equal(t, StudentKernel.Quantile(share, freedom), 0.0005);

    [Fact]
    public void Closed_forms_of_one_and_two_degrees()
    {
        for (double p = 0.01; p < 1; p += 0.0173)
        {
            Assert.Equal(Math.Tan(Math.PI * (p - 0.5)), StudentKernel.Quantile(p, 1), 1e-11 * (1 + Math.Abs(Math.Tan(Math.PI * (p - 0.5)))));
            Assert.Equal(((2 * p) - 1) / Math.Sqrt(2 * p * (1 - p)), StudentKernel.Quantile(p, 2), 1e-11 * (1 + (1 / (p * (1 - p)))));
        }
    }

    [Fact]
    public void The_series_of_many_degrees_goes_on_where_the_sums_end()
    {
        foreach (double p in new[] { 0.6, 0.9, 0.975, 0.9995 })
        {
            double summed = StudentKernel.Quantile(p, 400);
            double series = StudentKernel.Quantile(p, 401);
            Assert.True(series < summed && summed - series < 1e-4, $"{p}: {summed} and {series}");
            Assert.Equal(p, StudentKernel.Below(series, 401), 1e-10);
        }
    }
}
