using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>First-year rates by rows are those of the scalar form.</summary>
public sealed class Rates
{
    private const double Most = 16;

    [Fact]
    public void Rows_of_a_grid_over_all_the_data_agree_with_the_scalar_form()
    {
        var rows = new List<(double T, double Rh, double Pd, double Sd)>();
        foreach (double celsius in new[] { -17.1, -5, 0, 9.999999999, 10, 10.000000001, 15, 28.7 })
        {
            foreach (double percent in new[] { 34.0, 60, 75, 93 })
            {
                for (double sulfur = 0.7; sulfur <= 150.4; sulfur *= 1.7)
                {
                    for (double chloride = 0.4; chloride <= 760.5; chloride *= 1.7)
                    {
                        rows.Add((celsius, percent, sulfur, chloride));
                    }
                }
            }
        }

        double[] rates = new double[rows.Count];
        FirstYearRateRows.Zinc(
            rows.Select(static row => row.T).ToArray(),
            rows.Select(static row => row.Rh).ToArray(),
            rows.Select(static row => row.Pd).ToArray(),
            rows.Select(static row => row.Sd).ToArray(),
            rates);
        for (int i = 0; i < rates.Length; i++)
        {
            (double t, double rh, double pd, double sd) = rows[i];
            Ulps.AtMost(Most, Scalar(t, rh, pd, sd), rates[i], $"row {i}");
        }
    }

    [Property(MaxTest = 1000)]
    public Property A_row_of_any_air_agrees_with_the_scalar_form() => Prop.ForAll(
        Air().ToArbitrary(),
        static air =>
        {
            double[] rate = new double[1];
            FirstYearRateRows.Zinc(air.T, air.Rh, air.Pd, air.Sd, BeyondFit.AcceptWithFinding, rate);
            Ulps.AtMost(Most, Scalar(air.T, air.Rh, air.Pd, air.Sd), rate[0], $"{air}");
        });

    [Fact]
    public void Without_deposition_a_term_is_nothing()
    {
        double[] rate = new double[1];
        FirstYearRateRows.Zinc(20, 80, 0, 0, BeyondFit.AcceptWithFinding, rate);
        Assert.Equal(0, rate[0]);
    }

    [Theory]
    [InlineData(-17.2, 80, 5, 5)]
    [InlineData(28.8, 80, 5, 5)]
    [InlineData(15, 33.9, 5, 5)]
    [InlineData(15, 93.1, 5, 5)]
    [InlineData(15, 80, 0.6, 5)]
    [InlineData(15, 80, 150.5, 5)]
    [InlineData(15, 80, 5, 0.3)]
    [InlineData(15, 80, 5, 761)]
    public void Outside_the_data_a_row_is_not_a_number_unless_that_is_accepted(double t, double rh, double pd, double sd)
    {
        double[] rate = new double[3];
        FirstYearRateRows.Zinc(new[] { 15, t, 15 }, new[] { 80, rh, 80 }, new[] { 5, pd, 5 }, new[] { 5, sd, 5 }, rate);
        Assert.True(rate[0] > 0 && double.IsNaN(rate[1]) && rate[2] == rate[0]);
        FirstYearRateRows.Zinc(t, rh, pd, sd, BeyondFit.AcceptWithFinding, rate);
        Ulps.AtMost(Most, Scalar(t, rh, pd, sd), rate[0], "accepted");
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(-1000)]
    public void What_no_air_can_be_is_not_a_number_even_so(double bad)
    {
        double[] rate = new double[4];
        double[] one = [bad, 15, 15, 15];
        double[] two = [80, bad, 80, 80];
        double[] three = [5, 5, bad, 5];
        double[] four = [5, 5, 5, bad];
        FirstYearRateRows.Zinc(one, two, three, four, BeyondFit.AcceptWithFinding, rate);
        Assert.All(rate, static value => Assert.True(double.IsNaN(value)));
    }

    private static double Scalar(double t, double rh, double pd, double sd) => ExposureKernel.Zinc(t, rh, pd, sd, default(NoSteps)).Rate;

    private static Gen<(double T, double Rh, double Pd, double Sd)> Air() =>
        from t in Gen.Choose(-9000, 7000)
        from rh in Gen.Choose(0, 10000)
        from pd in Gen.Choose(-600, 600)
        from sd in Gen.Choose(-600, 600)
        select (t / 100.0, rh / 100.0, Math.Pow(10, pd / 100.0), Math.Pow(10, sd / 100.0));
}
