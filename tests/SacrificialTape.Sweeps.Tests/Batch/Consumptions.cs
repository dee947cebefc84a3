using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;
using UnitsNet;

namespace SacrificialTape.Sweeps.Tests.Batch;

/// <summary>Metal used up by a current, by rows, is that of the typed form.</summary>
public sealed class Consumptions
{
    [Theory]
    [InlineData(Metal.Zinc)]
    [InlineData(Metal.CarbonSteel)]
    public void Recession_and_mass_loss_of_a_grid_are_the_typed_form_bit_for_bit(Metal metal)
    {
        double[] current = Grid(1e-6, 1e2, 1.61);
        double[] rate = new double[current.Length];
        double[] mass = new double[current.Length];
        ConsumptionRows.Recession(current, metal, 7000, rate);
        ConsumptionRows.MassLoss(current, metal, mass);
        for (int i = 0; i < current.Length; i++)
        {
            var density = ElectricCurrentDensity.FromAmperesPerSquareMeter(current[i]);
            Assert.Equal(FaradayLaw.Recession(density, metal, Density.FromKilogramsPerCubicMeter(7000)).MicrometersPerYear, rate[i]);
            Assert.Equal(FaradayLaw.MassLoss(density, metal).GramsPerSquareMeterYear, mass[i]);
        }
    }

    // NACE International, Corrosion Engineer's Reference Book, and ASTM G102 print 11.6 um/a for iron and 15.0 um/a for zinc at
    // 1 uA/cm2 (recalled, check before use).
    [Theory]
    [InlineData(Metal.Zinc, 7140, 15.0)]
    [InlineData(Metal.CarbonSteel, 7870, 11.6)]
    public void A_microampere_on_a_square_centimetre_takes_what_tables_say(Metal metal, double density, double expected)
    {
        double[] rate = new double[5];
        ConsumptionRows.Recession(0.01, metal, density, rate);
        Assert.All(rate, one => Assert.Equal(expected, one, 0.05));
    }

    [Fact]
    public void Anodes_of_a_grid_are_the_typed_form_bit_for_bit()
    {
        double[] amperes = Grid(1e-4, 1e3, 2.3);
        double[] years = [.. amperes.Select(static one => 40 / (1 + one))];
        double[] mass = new double[amperes.Length];
        double[] byConsumption = new double[amperes.Length];
        double[] life = new double[amperes.Length];
        double[] lifeByConsumption = new double[amperes.Length];
        double capacity = PracticalCapacity.IsoBuried.Capacity.AmpereHoursPerKilogram;
        ConsumptionRows.AnodeMass(amperes, years, capacity, 0.8, mass);
        ConsumptionRows.AnodeMassByConsumption(amperes, years, 10.7, 0.9, 0.85, byConsumption);
        ConsumptionRows.AnodeLife(mass, capacity, 0.8, amperes, life);
        ConsumptionRows.AnodeLifeByConsumption(byConsumption, 10.7, 0.9, 0.85, amperes, lifeByConsumption);
        var consumption = AnodeConsumption.FromKilogramsPerAmpereYear(10.7);
        var efficiency = CurrentEfficiency.FromFraction(0.9);
        for (int i = 0; i < amperes.Length; i++)
        {
            var current = ElectricCurrent.FromAmperes(amperes[i]);
            var time = Duration.FromYears365(years[i]);
            Ulps.AtMost(2, new AnodeMass(PracticalCapacity.IsoBuried, Utilisation.FromFraction(0.8), current, time).Mass.Kilograms, mass[i], "mass");
            Ulps.AtMost(
                2,
                AnodeMass.ByConsumption(consumption, efficiency, Utilisation.FromFraction(0.85), current, time).Mass.Kilograms,
                byConsumption[i],
                "mass by consumption");
            Assert.Equal(
                new AnodeLife(Mass.FromKilograms(mass[i]), PracticalCapacity.IsoBuried, Utilisation.FromFraction(0.8), current).Life.Years, life[i]);
            Assert.Equal(
                AnodeLife.ByConsumption(
                    Mass.FromKilograms(byConsumption[i]), consumption, efficiency, Utilisation.FromFraction(0.85), current).Life.Years,
                lifeByConsumption[i]);
            Ulps.AtMost(4, years[i], life[i], "there and back");
            Ulps.AtMost(4, years[i], lifeByConsumption[i], "there and back by consumption");
        }
    }

    // Each value in turn out of its range while the others are right, then each at its end.
    [Fact]
    public void What_the_typed_form_refuses_is_not_a_number_and_what_it_takes_is_one()
    {
        double most = TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram;
        Holds(static (x, answer) => ConsumptionRows.AnodeMass(x[0], x[1], x[2], x[3], answer), [1, 10, 780, 0.8], [double.MaxValue, 20, most, 1]);
        Holds(static (x, answer) => ConsumptionRows.AnodeLife(x[0], x[1], x[2], x[3], answer), [10, 780, 0.8, 1], [20, most, 1, double.MaxValue]);
        Holds(
            static (x, answer) => ConsumptionRows.AnodeMassByConsumption(x[0], x[1], x[2], x[3], x[4], answer),
            [1, 10, 10.7, 0.9, 0.8],
            [double.MaxValue, 20, 20, 1, 1]);
        Holds(
            static (x, answer) => ConsumptionRows.AnodeLifeByConsumption(x[0], x[1], x[2], x[3], x[4], answer),
            [10, 10.7, 0.9, 0.8, 1],
            [20, 20, 1, 1, double.MaxValue]);

        static void Holds(Action<double[], double[]> work, double[] right, double[] ends)
        {
            double[] answer = new double[3];
            for (int i = 0; i < right.Length; i++)
            {
                foreach (double wrong in new[] { 0, -1, double.NaN, double.PositiveInfinity, double.NegativeInfinity })
                {
                    Assert.All(With(i, wrong), one => Assert.True(double.IsNaN(one), $"value {i + 1} as {wrong}"));
                }

                if (ends[i] == 1 || ends[i] == TheoreticalCapacity.Zinc.Capacity.AmpereHoursPerKilogram)
                {
                    Assert.All(With(i, Math.BitIncrement(ends[i])), one => Assert.True(double.IsNaN(one), $"value {i + 1} just above {ends[i]}"));
                }

                Assert.All(With(i, ends[i]), one => Assert.True(one >= 0, $"value {i + 1} as {ends[i]}"));
            }

            double[] With(int at, double value)
            {
                double[] values = [.. right];
                values[at] = value;
                work(values, answer);
                return answer;
            }
        }
    }

    [Fact]
    public void A_current_below_nothing_and_a_metal_unknown_are_refused()
    {
        double[] rate = new double[3];
        ConsumptionRows.Recession(new[] { -1, double.NaN, 1 }, Metal.Zinc, 7140, rate);
        Assert.True(double.IsNaN(rate[0]) && double.IsNaN(rate[1]) && rate[2] > 0);
        ConsumptionRows.Recession(1, Metal.Zinc, new double[] { 0, -1, double.NaN }, rate);
        Assert.All(rate, static one => Assert.True(double.IsNaN(one)));
        ConsumptionRows.MassLoss(new[] { -1, double.NaN, 1 }, Metal.CarbonSteel, rate);
        Assert.True(double.IsNaN(rate[0]) && double.IsNaN(rate[1]) && rate[2] > 0);
        Assert.Throws<ArgumentOutOfRangeException>("metal", () => ConsumptionRows.MassLoss(1, (Metal)99, rate));
        Assert.Throws<ArgumentException>("amperesPerM2", () => ConsumptionRows.MassLoss(rate, Metal.Zinc, rate));
        Assert.Throws<ArgumentException>("usable", () => ConsumptionRows.AnodeMass(1, 1, 780, new double[2], rate));
    }

    private static double[] Grid(double low, double high, double factor)
    {
        var all = new List<double>();
        for (double one = low; one < high; one *= factor)
        {
            all.Add(one);
        }

        return [.. all];
    }
}
