using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;
using UnitsNet;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>Lives from climate in one pass are those of the typed form, and of the two passes bit for bit.</summary>
public sealed class ClimateLives
{
    public static TheoryData<double> Exponents => [0.3, 0.523, 0.813, 0.873, 1];

    [Theory]
    [MemberData(nameof(Exponents))]
    public void Lives_of_a_log_grid_agree_with_the_typed_form(double exponent)
    {
        var rows = new List<(double T, double Rh, double Pd, double Sd, double Zinc)>();
        foreach (double celsius in new[] { -17.1, 0, 9.999999999, 10, 15, 28.7 })
        {
            foreach (double percent in new[] { 34.0, 76, 93 })
            {
                for (double sulfur = 0.7; sulfur <= 150.4; sulfur *= 2.1)
                {
                    for (double chloride = 0.4; chloride <= 760.5; chloride *= 2.3)
                    {
                        for (double zinc = 0.1; zinc < 1e4; zinc *= 5.9)
                        {
                            rows.Add((celsius, percent, sulfur, chloride, zinc));
                        }
                    }
                }
            }
        }

        double[] years = new double[rows.Count];
        LifeFromClimateRows.Zinc(
            rows.Select(static row => row.T).ToArray(),
            rows.Select(static row => row.Rh).ToArray(),
            rows.Select(static row => row.Pd).ToArray(),
            rows.Select(static row => row.Sd).ToArray(),
            rows.Select(static row => row.Zinc).ToArray(),
            exponent,
            years);
        var law = new PowerLawLoss(TimeExponent.FromValue(exponent));
        for (int i = 0; i < years.Length; i++)
        {
            var air = new AnnualAtmosphere(
                Temperature.FromDegreesCelsius(rows[i].T),
                RelativeHumidity.FromPercent(rows[i].Rh),
                DepositionRate.FromMilligramsPerSquareMeterDay(rows[i].Pd),
                DepositionRate.FromMilligramsPerSquareMeterDay(rows[i].Sd));
            double typed = law.TimeToLoss(new DoseResponse(Metal.Zinc, air).Rate, Length.FromMicrometers(rows[i].Zinc)).Years;
            Ulps.AtMost((20 + (2 * Math.Abs(Math.Log(typed)))) / exponent, typed, years[i], $"{rows[i]}, b = {exponent}");
        }
    }

    [Fact]
    public void One_pass_is_the_two_passes_bit_for_bit_at_every_width_and_cut()
    {
        const int Rows = 517;
        double[] celsius = Spread(0, Rows, -15, 25);
        double[] percent = Spread(1, Rows, 40, 90);
        double[] sulfur = Spread(2, Rows, 1, 120);
        double[] chloride = Spread(3, Rows, 1, 700);
        double[] zinc = Spread(4, Rows, 1, 200);
        double[] exponent = Spread(5, Rows, 0.4, 1);
        double[] rate = new double[Rows];
        double[] two = new double[Rows];
        FirstYearRateRows.Zinc(celsius, percent, sulfur, chloride, rate);
        LifeRows.PowerLaw(zinc, rate, exponent, two);
        Assert.Equal(two, Work<TwoLanes>());
        Assert.Equal(two, Work<FourLanes>());
        Assert.Equal(two, Work<EightLanes>());
        double[] one = new double[1];
        double[] three = new double[3];
        for (int i = 0; i + 3 <= Rows; i++)
        {
            LifeFromClimateRows.Zinc(celsius[i], percent[i], sulfur[i], chloride[i], zinc[i], exponent[i], one);
            Assert.Equal(two[i], one[0]);
            LifeFromClimateRows.Zinc(
                celsius.AsSpan(i, 3), percent.AsSpan(i, 3), sulfur.AsSpan(i, 3), chloride.AsSpan(i, 3), zinc.AsSpan(i, 3), exponent.AsSpan(i, 3), three);
            Assert.Equal(two[i..(i + 3)], three);
        }

        double[] Work<TLanes>()
            where TLanes : struct, ILanes<TLanes>
        {
            double[] years = new double[Rows];
            RowLoop.Run<LifeFromClimateRows.ZincLives, TLanes>(
                new LifeFromClimateRows.ZincLives(
                    celsius, percent, sulfur, chloride, zinc, new LawColumn(exponent), years, DoseRangeTerms.Fit),
                Rows);
            return years;
        }
    }

    [Fact]
    public void One_air_for_all_rows_is_a_column_of_it()
    {
        double[] zinc = Spread(1, 101, 1, 300);
        double[] single = new double[101];
        double[] column = new double[101];
        LifeFromClimateRows.Zinc(12.5, 76, 6, 25, zinc, 0.813, single);
        LifeFromClimateRows.Zinc(zinc.Select(static _ => 12.5).ToArray(), 76, 6, 25, zinc, 0.813, column);
        Assert.Equal(column, single);
    }

    [Theory]
    [InlineData(double.NaN, 76, 6, 25, 80, 0.813)]
    [InlineData(31, 76, 6, 25, 80, 0.813)]
    [InlineData(11, 33, 6, 25, 80, 0.813)]
    [InlineData(11, 76, 0.6, 25, 80, 0.813)]
    [InlineData(11, 76, 6, double.PositiveInfinity, 80, 0.813)]
    [InlineData(11, 76, 6, 25, -1, 0.813)]
    [InlineData(11, 76, 6, 25, double.NaN, 0.813)]
    [InlineData(11, 76, 6, 25, 80, 0)]
    [InlineData(11, 76, 6, 25, 80, 1.01)]
    public void What_the_typed_form_refuses_is_not_a_number(double t, double rh, double pd, double sd, double zinc, double exponent)
    {
        double[] years = new double[3];
        LifeFromClimateRows.Zinc(t, rh, pd, sd, zinc, exponent, years);
        Assert.All(years, static one => Assert.True(double.IsNaN(one)));
        LifeFromClimateRows.Zinc(new[] { 11, t, 11 }, new[] { 76, rh, 76 }, new[] { 6, pd, 6 }, new[] { 25, sd, 25 }, new[] { 80, zinc, 80 }, new[] { 0.8, exponent, 0.8 }, years);
        Assert.True(years[0] > 0 && double.IsNaN(years[1]) && years[2] == years[0]);
    }

    [Fact]
    public void Air_that_corrodes_nothing_is_endless_and_the_rest_is_refused()
    {
        double[] years = new double[2];
        LifeFromClimateRows.Zinc(20, 80, 0, 0, new double[] { 80, 0 }, 0.813, BeyondFit.AcceptWithFinding, years);
        Assert.Equal([double.PositiveInfinity, 0], years);
        Assert.Throws<ArgumentOutOfRangeException>("beyond", () => LifeFromClimateRows.Zinc(20, 80, 1, 1, 80, 0.8, (BeyondFit)9, years));
        Assert.Throws<ArgumentException>("zincUm", () => LifeFromClimateRows.Zinc(20, 80, 1, 1, years, 0.8, years));
        Assert.Throws<ArgumentException>("chlorideMgPerM2Day", () => LifeFromClimateRows.Zinc(20, 80, 1, new double[3], 80, 0.8, years));
    }

    private static double[] Spread(int which, int rows, double low, double high) =>
        [.. Enumerable.Range(1, rows).Select(i => low + ((high - low) * (((i + (which * 17)) * 0.6180339887498949) % 1)))];
}
