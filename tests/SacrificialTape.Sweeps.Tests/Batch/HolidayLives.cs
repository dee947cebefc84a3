using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>Lives beside bare steel by rows are those of the typed form.</summary>
public sealed class HolidayLives
{
    private const double Density = 7140;

    [Fact]
    public void At_a_practical_capacity_a_row_is_the_typed_form()
    {
        double capacity = PracticalCapacity.DnvSeawater.Capacity.AmpereHoursPerKilogram;
        double[] years = new double[1];
        for (double foil = 5; foil <= 2000; foil *= 2.7)
        {
            for (double demand = 1e-4; demand < 10; demand *= 3.3)
            {
                HolidayLifeRows.AtPracticalCapacity(foil, 0.8, 5.0 / 7, demand, capacity, Density, years);
                HolidayLife life = Typed(foil, demand, new DemandAtPracticalCapacity(PracticalCapacity.DnvSeawater));
                Ulps.AtMost(4, life.Earliest.Years, years[0], $"foil {foil}, demand {demand}");
            }
        }
    }

    [Fact]
    public void With_own_corrosion_a_row_agrees_with_the_typed_form()
    {
        double[] years = new double[1];
        int before = 0;
        int beyond = 0;
        foreach (double exponent in new[] { 0.05, 0.523, 0.813, 0.873, 1 })
        {
            var law = new PowerLawLoss(TimeExponent.FromValue(exponent));
            for (double foil = 5; foil <= 2000; foil *= 2.3)
            {
                for (double demand = 1e-6; demand < 10; demand *= 4.1)
                {
                    for (double rate = 0.01; rate < 100; rate *= 3.7)
                    {
                        HolidayLifeRows.WithOwnCorrosion(foil, 0.8, 5.0 / 7, demand, rate, exponent, Density, years);
                        double typed = Typed(foil, demand, Own(rate, law)).Earliest.Years;
                        _ = typed > 20 ? beyond++ : before++;
                        Ulps.AtMost(200, typed, years[0], $"b {exponent}, foil {foil}, demand {demand}, rate {rate}");
                    }
                }
            }
        }

        Assert.True(before > 500 && beyond > 500);
    }

    // b = 1/2 makes r sqrt(t) + g t = s a quadratic in sqrt(t), and b = 1 a straight line; g by Faraday's law worked by hand,
    // 5/7 of bare steel to each area of zinc: 2 electrons, 65.38 g/mol, 96485.332 C/mol.
    [Fact]
    public void Laws_with_a_closed_inverse_give_it()
    {
        double[] years = new double[1];
        for (double demand = 1e-4; demand < 1; demand *= 2.9)
        {
            double taken = demand * 5 / 7 * 65.38 / (2 * 96485.332) * 3600 * 8760 / Density * 1000;
            for (double rate = 1; rate < 40; rate *= 1.9)
            {
                const double Zinc = 0.8 * 20;
                HolidayLifeRows.WithOwnCorrosion(20, 0.8, 5.0 / 7, demand, rate, 1, Density, years);
                Assert.Equal(Zinc / (rate + taken), years[0], 1e-13 * years[0]);

                double root = 2 * Zinc / (rate + Math.Sqrt((rate * rate) + (4 * taken * Zinc)));
                if (root * root < 20)
                {
                    HolidayLifeRows.WithOwnCorrosion(20, 0.8, 5.0 / 7, demand, rate, 0.5, Density, years);
                    Assert.Equal(root * root, years[0], 1e-13 * years[0]);
                }
            }
        }
    }

    [Fact]
    public void One_cause_alone_decides_where_the_other_is_nothing()
    {
        double[] years = new double[4];
        double[] demand = [0, 0.01, 0, 0.01];
        double[] rate = [2, 0, 0, 2];
        HolidayLifeRows.WithOwnCorrosion(80, 1, 1, demand, rate, 0.813, Density, years);
        double[] alone = new double[1];
        LifeRows.PowerLaw(80, 2, 0.813, alone);
        Assert.Equal(alone[0], years[0]);
        double[] fed = new double[1];
        HolidayLifeRows.AtPracticalCapacity(
            80, 1, 1, 0.01, TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram, Density, fed);
        Assert.Equal(fed[0], years[1]);
        Assert.Equal(double.PositiveInfinity, years[2]);
        Assert.True(years[3] < Math.Min(alone[0], fed[0]));
    }

    [Fact]
    public void A_row_is_the_same_bits_at_every_width_and_beside_any_other()
    {
        const int Rows = 203;
        double[] foil = Spread(1, Rows, 5, 300);
        double[] demand = Spread(2, Rows, 0, 0.3);
        double[] rate = Spread(3, Rows, 0.1, 30);
        double[] exponent = Spread(4, Rows, 0.02, 1);
        double[] two = Work<TwoLanes>();
        Assert.Equal(two, Work<FourLanes>());
        Assert.Equal(two, Work<EightLanes>());
        double[] one = new double[1];
        for (int i = 0; i < Rows; i++)
        {
            HolidayLifeRows.WithOwnCorrosion(foil[i], 0.8, 0.7, demand[i], rate[i], exponent[i], Density, one);
            Assert.Equal(two[i], one[0]);
        }

        double[] Work<TLanes>()
            where TLanes : struct, ILanes<TLanes>
        {
            double[] years = new double[Rows];
            RowLoop.Run<HolidayLifeRows.Both, TLanes>(
                new HolidayLifeRows.Both(
                    foil, 0.8, 0.7, demand, rate, new LawColumn(exponent), Density, GalvanicKernel.ZincCapacity(), years),
                Rows);
            return years;
        }
    }

    [Theory]
    [InlineData(4.9, 0.8, 1, 0.01, 2, 0.8, 7140)]
    [InlineData(2001, 0.8, 1, 0.01, 2, 0.8, 7140)]
    [InlineData(80, 0, 1, 0.01, 2, 0.8, 7140)]
    [InlineData(80, 1.1, 1, 0.01, 2, 0.8, 7140)]
    [InlineData(80, 0.8, -1, 0.01, 2, 0.8, 7140)]
    [InlineData(80, 0.8, double.NaN, 0.01, 2, 0.8, 7140)]
    [InlineData(80, 0.8, double.PositiveInfinity, 0.01, 2, 0.8, 7140)]
    [InlineData(80, 0.8, 1, -0.01, 2, 0.8, 7140)]
    [InlineData(80, 0.8, 1, double.NaN, 2, 0.8, 7140)]
    [InlineData(80, 0.8, 1, double.PositiveInfinity, 2, 0.8, 7140)]
    [InlineData(80, 0.8, 1, 0.01, -2, 0.8, 7140)]
    [InlineData(80, 0.8, 1, 0.01, double.NaN, 0.8, 7140)]
    [InlineData(80, 0.8, 1, 0.01, 2, 0, 7140)]
    [InlineData(80, 0.8, 1, 0.01, 2, 1.1, 7140)]
    [InlineData(80, 0.8, 1, 0.01, 2, 0.8, 5999)]
    [InlineData(80, 0.8, 1, 0.01, 2, 0.8, 8001)]
    public void What_the_typed_form_refuses_is_not_a_number(
        double foil, double usable, double feed, double demand, double rate, double exponent, double density)
    {
        double[] years = new double[1];
        HolidayLifeRows.WithOwnCorrosion(foil, usable, feed, demand, rate, exponent, density, years);
        Assert.True(double.IsNaN(years[0]));
        if (rate == 2 && exponent == 0.8)
        {
            HolidayLifeRows.AtPracticalCapacity(foil, usable, feed, demand, 780, density, years);
            Assert.True(double.IsNaN(years[0]));
        }
    }

    [Theory]
    [InlineData(5, 0.8, 1, 0.01, 7140)]
    [InlineData(2000, 0.8, 1, 0.01, 7140)]
    [InlineData(80, 1, 1, 0.01, 7140)]
    [InlineData(80, 0.8, 1, 0.01, 6000)]
    [InlineData(80, 0.8, 1, 0.01, 8000)]
    [InlineData(80, 0.8, 0, 0.01, 7140)]
    [InlineData(80, 0.8, 1, 0, 7140)]
    [InlineData(80, 0.8, 1, double.MaxValue, 7140)]
    [InlineData(80, 0.8, double.MaxValue, 0.01, 7140)]
    public void The_ends_of_every_range_are_answered(double foil, double usable, double feed, double demand, double density)
    {
        double capacity = TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram;
        double taken = 8760 * 1e6 * feed * demand / (capacity * density);
        double[] years = new double[1];
        HolidayLifeRows.AtPracticalCapacity(foil, usable, feed, demand, capacity, density, years);
        double expected = usable * foil / taken;
        Assert.True(years[0] == expected || Math.Abs(years[0] - expected) <= 1e-15 * expected);

        // Own corrosion of 2 um/a by the linear law beside it.
        HolidayLifeRows.WithOwnCorrosion(foil, usable, feed, demand, 2, 1, density, years);
        expected = usable * foil / (2 + taken);
        Assert.True(years[0] == expected || Math.Abs(years[0] - expected) <= 1e-12 * expected);
    }

    // What a demand takes may overflow: then no time is left, by the power law too.
    [Theory]
    [InlineData(1)]
    [InlineData(0.8)]
    public void A_demand_that_overflows_leaves_no_time(double exponent)
    {
        double[] years = [1, 1, 1];
        HolidayLifeRows.WithOwnCorrosion(80, 0.8, 1, new[] { double.MaxValue, 1e305, 0.01 }, 2, exponent, Density, years);
        Assert.Equal([0, 0], years[..2]);
        Assert.InRange(years[2], 0.1, 10);
        var life = new HolidayLife(
            new Foil(Length.FromMicrometers(80)),
            ZincFeed.BesideMargin(Length.FromMillimeters(5), Length.FromMillimeters(5)),
            CurrentDemand.FromMeasurement(ElectricCurrentDensity.Zero, ElectricCurrentDensity.FromAmperesPerSquareMeter(double.MaxValue), "made up"),
            new OwnCorrosionAndDemand(TheoreticalCapacity.Zinc, ZincExposure.FromCategory(CorrosivityCategory.C3), exponent == 1 ? LinearLoss.Law : PowerLawLoss.ZincMean),
            Utilisation.FromFraction(0.8));
        Assert.Equal(0, life.Earliest.Duration.Years365);
        Assert.InRange(life.Latest.Duration.Years365, 1, 1000);

        // A rate without end is no number that workings could show: they say so.
        Assert.Contains("any finite number um/a", Assert.Throws<ArgumentOutOfRangeException>(life.ShowWorkings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void More_capacity_than_there_is_and_shared_memory_are_refused()
    {
        double[] years = new double[2];
        HolidayLifeRows.AtPracticalCapacity(80, 0.8, 1, 0.01, new[] { 821, 0.0 }, Density, years);
        Assert.All(years, static one => Assert.True(double.IsNaN(one)));
        Assert.Throws<ArgumentException>("barePerZinc", () => HolidayLifeRows.WithOwnCorrosion(80, 0.8, years, 0.01, 2, 0.8, Density, years));
        Assert.Throws<ArgumentException>("foilUm", () => HolidayLifeRows.AtPracticalCapacity(new double[3], 0.8, 1, 0.01, 780, Density, years));
    }

    private static OwnCorrosionAndDemand Own(double rate, ILossLaw law) => new(
        TheoreticalCapacity.Zinc, ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(rate), "made up"), law);

    private static HolidayLife Typed(double foilUm, double demand, ZincConsumption consumption) => new(
        new Foil(Length.FromMicrometers(foilUm)),
        ZincFeed.BesideMargin(Length.FromMillimeters(5), Length.FromMillimeters(7)),
        CurrentDemand.FromMeasurement(
            ElectricCurrentDensity.FromAmperesPerSquareMeter(demand), ElectricCurrentDensity.FromAmperesPerSquareMeter(demand), "made up"),
        consumption,
        Utilisation.FromFraction(0.8));

    private static double[] Spread(int which, int rows, double low, double high) =>
        [.. Enumerable.Range(1, rows).Select(i => low + ((high - low) * (((i + (which * 17)) * 0.6180339887498949) % 1)))];
}
