using FsCheck;
using FsCheck.Xunit;
using SacrificialTape.Provenance;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>Losses and lives by rows are those of the scalar form.</summary>
public sealed class Lives
{
    public static TheoryData<double> Exponents => [0.523, 0.65, 0.813, 0.873, 1];

    [Theory]
    [MemberData(nameof(Exponents))]
    public void Lives_of_a_grid_by_the_power_law_agree_with_the_scalar_form(double exponent)
    {
        (double[] zinc, double[] rates) = Grid();
        double[] years = new double[zinc.Length];
        LifeRows.PowerLaw(zinc, rates, exponent, years);
        var law = new PowerLawTerms(exponent);
        for (int i = 0; i < years.Length; i++)
        {
            double expected = LossKernel.PowerYears(zinc[i], rates[i], law, default(NoSteps));
            Ulps.AtMost(Allowed(expected), expected, years[i], $"{zinc[i]} um at {rates[i]} um/a, b = {exponent}");
        }
    }

    [Theory]
    [MemberData(nameof(Exponents))]
    public void Losses_of_a_grid_by_the_power_law_agree_with_the_scalar_form(double exponent)
    {
        (double[] times, double[] rates) = Grid();
        double[] losses = new double[times.Length];
        LossRows.PowerLaw(rates, times, exponent, losses);
        var law = new PowerLawTerms(exponent);
        for (int i = 0; i < losses.Length; i++)
        {
            double expected = LossKernel.PowerLossUm(rates[i], times[i], law);
            Ulps.AtMost(Allowed(times[i]), expected, losses[i], $"{times[i]} a at {rates[i]} um/a, b = {exponent}");
        }
    }

    [Fact]
    public void Straight_lines_are_the_scalar_form_bit_for_bit()
    {
        (double[] zinc, double[] rates) = Grid();
        double[] answers = new double[zinc.Length];
        LifeRows.Linear(zinc, rates, answers);
        Assert.All(Enumerable.Range(0, zinc.Length), i => Assert.Equal(LossKernel.LinearYears(zinc[i], rates[i], default(NoSteps)), answers[i]));
        LossRows.Linear(rates, zinc, answers);
        Assert.All(Enumerable.Range(0, zinc.Length), i => Assert.Equal(LossKernel.LinearLossUm(rates[i], zinc[i]), answers[i]));
    }

    [Property(MaxTest = 1000)]
    public void A_life_and_the_loss_after_it_return(PositiveInt zinc, NonNegativeInt rate, NonNegativeInt slowing)
    {
        double um = zinc.Get;
        double perYear = 0.1 + rate.Get;
        double exponent = 0.3 + (0.0007 * (slowing.Get % 1000));
        double[] years = new double[1];
        double[] loss = new double[1];
        LifeRows.PowerLaw(um, perYear, exponent, years);
        LossRows.PowerLaw(perYear, years, exponent, loss);
        Assert.True(Math.Abs(loss[0] - um) <= 1e-13 * um, $"{um} um came back as {loss[0]}");
    }

    [Fact]
    public void One_exponent_for_all_rows_is_a_column_of_it_bit_for_bit()
    {
        (double[] zinc, double[] rates) = Grid();
        double[] exponents = [.. zinc.Select(static _ => 0.813)];
        double[] single = new double[zinc.Length];
        double[] column = new double[zinc.Length];
        LifeRows.PowerLaw(zinc, rates, 0.813, single);
        LifeRows.PowerLaw(zinc, rates, exponents, column);
        Assert.Equal(column, single);
        LossRows.PowerLaw(rates, zinc, 0.813, single);
        LossRows.PowerLaw(rates, zinc, exponents, column);
        Assert.Equal(column, single);
    }

    [Fact]
    public void Zinc_that_nothing_corrodes_lasts_for_ever_and_no_zinc_is_gone_at_once()
    {
        double[] years = new double[4];
        double[] zinc = [80, 0, 80, 0];
        double[] rates = [0, 0, 4, 4];
        LifeRows.Linear(zinc, rates, years);
        Assert.Equal([double.PositiveInfinity, 0, 20, 0], years);
        LifeRows.PowerLaw(zinc, rates, 1, years);
        Assert.Equal(double.PositiveInfinity, years[0]);
        Assert.Equal(0, years[1]);
        Ulps.AtMost(10, 20, years[2], "at the knee");
        Assert.Equal(0, years[3]);
    }

    [Theory]
    [InlineData(double.NaN, 4, 0.8)]
    [InlineData(-1, 4, 0.8)]
    [InlineData(double.PositiveInfinity, 4, 0.8)]
    [InlineData(80, double.NaN, 0.8)]
    [InlineData(0, double.NaN, 0.8)]
    [InlineData(80, -4, 0.8)]
    [InlineData(80, double.PositiveInfinity, 0.8)]
    [InlineData(80, 4, double.NaN)]
    [InlineData(80, 4, 0)]
    [InlineData(80, 4, 1.01)]
    public void What_the_typed_form_refuses_is_not_a_number(double one, double other, double exponent)
    {
        double[] answer = new double[1];
        LifeRows.PowerLaw(one, other, exponent, answer);
        Assert.True(double.IsNaN(answer[0]));
        LossRows.PowerLaw(other, one, exponent, answer);
        Assert.True(double.IsNaN(answer[0]));
        if (exponent == 0.8)
        {
            LifeRows.Linear(one, other, answer);
            Assert.True(double.IsNaN(answer[0]));
            LossRows.Linear(other, one, answer);
            Assert.True(double.IsNaN(answer[0]));
        }
    }

    private static double Allowed(double years) => 4 + (2 * Math.Abs(Math.Log(years)));

    private static (double[] Ones, double[] Others) Grid()
    {
        var ones = new List<double>();
        var others = new List<double>();
        for (double one = 1e-3; one < 1e4; one *= 1.37)
        {
            for (double other = 1e-2; other < 1e3; other *= 1.83)
            {
                ones.Add(one);
                others.Add(other);
            }
        }

        return ([.. ones], [.. others]);
    }
}
