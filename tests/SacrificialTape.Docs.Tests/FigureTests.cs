using System.Globalization;
using SacrificialTape.Exposure;
using SacrificialTape.Galvanic;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;
using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <summary>Figures drawn from the library's own numbers, so that they cannot drift from it.</summary>
public partial class FigureTests
{
    private const string Switch = "SACRIFICIALTAPE_WRITE_PAGES";

    [Fact]
    public void Rates_by_category()
    {
        var plot = new SvgPlot(
            "First-year rates by corrosivity category, zinc and carbon steel",
            "Bars on a logarithmic scale of micrometres a year, from C1 at the top to CX at the bottom, zinc above steel in each row. In every category steel goes ten to forty times as fast as zinc. C1 has no lower end.",
            (0.03, 4000), (6.6, 0.4), 400, logarithmic: true);
        foreach (CorrosivityCategory category in Enum.GetValues<CorrosivityCategory>())
        {
            int row = (int)category;
            foreach ((Metal metal, double down, string fill, string border) in new[]
            {
                (Metal.Zinc, -0.18, "#bcd6ea", SvgPlot.Blue), (Metal.CarbonSteel, 0.18, "#f6e0bd", SvgPlot.Orange),
            })
            {
                RateRange range = Corrosivity.RatesOf(category, metal);
                double low = range.Lowest.MicrometersPerYear;
                double high = range.Highest.MicrometersPerYear;
                plot.Bar(low == 0 ? 0.03 : low, high, row + down, 18, fill, border);
                plot.Say(high, row + down, low == 0 ? $"to {Text(high)}" : $"{Text(low)} to {Text(high)}", "#333333", right: 6, down: 5);
            }

            plot.UpTick(row, category.ToString());
        }

        foreach (double tick in new[] { 0.1, 1, 10, 100, 1000 })
        {
            plot.AcrossTick(tick, Text(tick));
        }

        plot.Say(40, 1, "zinc: upper bar, blue", "#00588a", down: -2);
        plot.Say(40, 1, "carbon steel: lower bar, orange", "#a84800", down: 18);
        plot.AxisNames("rate of the first year, um/a (logarithmic)", "category");
        Hold("rates-by-category.svg", plot);
    }

    [Fact]
    public void Potential_under_three_films()
    {
        static ElectrodePotential Sce(double volts) => ElectrodePotential.FromVolts(volts, ReferenceElectrode.Calomel);
        var zinc = new LinearElectrode("zinc", Sce(-1.03), PolarisationResistance.FromOhmSquareMeters(0.1));
        var steel = new LinearElectrode("steel", Sce(-0.60), PolarisationResistance.FromOhmSquareMeters(1));
        var plot = new SvgPlot(
            "Potential along bare steel beside zinc, under films of 10, 100 and 1000 um",
            "Three curves of potential against the distance from the edge of the zinc, 0 to 20 mm, under water of 0.05 S/m. Under 10 um the potential is back near that of bare steel within 3 mm, under 100 um within 8 mm, under 1000 um it is still a little below it at 20 mm. A dashed level marks -0.776 V SCE, which is -0.85 V CSE: the curves cross it within a few millimetres.",
            (0, 20), (-1.05, -0.56));
        foreach ((double um, string colour, string dashes, double word) in new[]
        {
            (10.0, SvgPlot.Orange, "3 4", 1.8), (100, SvgPlot.Blue, string.Empty, 5.2), (1000, SvgPlot.Green, "10 4", 12.0),
        })
        {
            var film = new ThinFilm(Length.FromMicrometers(um), ElectricConductivity.FromSiemensPerMeter(0.05));
            var couple = new LinearCouple(film, zinc, Length.FromMillimeters(25), steel, Length.FromMillimeters(200));
            double At(double mm) => couple.OnSteel(Length.FromMillimeters(mm)).Volts;
            plot.Curve(Enumerable.Range(0, 101).Select(i => (i * 0.2, At(i * 0.2))), colour, dashes);
            plot.Say(word, um == 10 ? -0.60 : At(word), Text(um) + " um", colour == SvgPlot.Green ? "#006b4e" : colour == SvgPlot.Blue ? "#00588a" : "#a84800", right: 6, down: um == 10 ? -7 : 20);
        }

        plot.Level(-0.776, SvgPlot.Grey);
        plot.Say(20, -0.776, "−0.85 V CSE: a criterion", "#555555", "end", down: -6);
        plot.Level(-0.60, SvgPlot.Grey);
        plot.Say(20, -0.60, "steel alone", "#555555", "end", down: -7);
        foreach (double tick in new[] { 0.0, 5, 10, 15, 20 })
        {
            plot.AcrossTick(tick, Text(tick));
        }

        foreach (double tick in new[] { -1.0, -0.9, -0.8, -0.7, -0.6 })
        {
            plot.UpTick(tick, tick.ToString("0.0", CultureInfo.InvariantCulture).Replace('-', '−'));
        }

        plot.AxisNames("distance from the edge of the zinc, mm; water of 0.05 S/m, linear metals", "potential, V SCE");
        Hold("films.svg", plot);
    }

    [Fact]
    public void Life_with_percentiles()
    {
        var life = new LifeDistribution(
            new Foil(Length.FromMicrometers(100), Length.FromMicrometers(10)),
            1,
            new LifeUncertainty(
                UncertainRate.FromCategory(CorrosivityCategory.C3, Probability.FromFraction(0.05)),
                LossGrowth.PowerLaw(UncertainExponent.Zinc, AfterTwentyYears.Tangent),
                UncertainUtilisation.Triangular(Utilisation.FromFraction(0.6), Utilisation.FromFraction(0.8), Utilisation.FromFraction(0.95)),
                ToleranceShape.Triangular));
        double Chance(double years) => 100 * life.ChanceOf(Lifetime.Of(Duration.FromYears365(years))).Fraction;
        var plot = new SvgPlot(
            "How surely a life is reached: one layer of 100 um in C3",
            "A curve of the chance of reaching a life against its years, from 100 per cent at the start falling to a few per cent at 300 years. Dots mark the lives that are reached with 99, 90, 50 and 10 per cent. An upright line marks a required life of 50 years, which is reached almost surely.",
            (0, 300), (0, 105));
        plot.Upright(50, Chance(50), SvgPlot.Orange, "9 4");
        plot.Say(50, 20, FormattableString.Invariant($"required: 50 a, {Chance(50):0.0} %"), "#a84800", right: 8);
        plot.Curve(Enumerable.Range(0, 151).Select(i => (i * 2.0, Chance(i * 2))), SvgPlot.Blue);
        foreach (double confidence in new[] { 0.99, 0.9, 0.5, 0.1 })
        {
            double years = life.ReachedWith(Probability.FromFraction(confidence)).Duration.Years365;
            plot.Dot(years, 100 * confidence, SvgPlot.Blue);
            plot.Say(years, 100 * confidence, FormattableString.Invariant($"{100 * confidence:0} % reach {years:0} a"), "#00588a", right: 10, down: confidence > 0.95 ? -8 : 2);
        }

        foreach (double tick in new[] { 0.0, 50, 100, 150, 200, 250, 300 })
        {
            plot.AcrossTick(tick, Text(tick));
        }

        foreach (double tick in new[] { 0.0, 25, 50, 75, 100 })
        {
            plot.UpTick(tick, Text(tick));
        }

        plot.AxisNames("life, a", "chance that it is reached, %");
        Hold("life-distribution.svg", plot);
    }

    [Fact]
    public void Loss_under_three_laws()
    {
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(2.1);
        double Power(double years) => PowerLawLoss.ZincMean.Loss(rate, Duration.FromYears365(years)).Micrometers;
        double Linear(double years) => LinearLoss.Law.Loss(rate, Duration.FromYears365(years)).Micrometers;
        const double Layer = 15;
        double one = PowerLawLoss.ZincMean.TimeToLoss(rate, Length.FromMicrometers(Layer)).Duration.Years365;
        double Layers(double years) => (Layer * Math.Floor(years / one)) + Power(years % one);
        var plot = new SvgPlot(
            "Loss of zinc at 2.1 um in the first year under three laws",
            "Loss against time, 0 to 50 years. The straight line of the linear law takes most. The power law bends away below it up to 20 years and goes on straight along its tangent, and takes least. Layers of 15 um under the power law, each beginning anew when the one above is gone, lie between the two.",
            (0, 50), (0, 110));
        double[] years = [.. Enumerable.Range(0, 251).Select(static i => i * 0.2)];
        plot.Curve(years.Select(at => (at, Linear(at))), SvgPlot.Orange, "10 4");
        plot.Curve(years.Select(at => (at, Layers(at))), SvgPlot.Green, "3 3");
        plot.Curve(years.Select(at => (at, Power(at))), SvgPlot.Blue);
        plot.Upright(20, Power(20), SvgPlot.Grey);
        plot.Say(20, 0, "tangent from 20 a", "#555555", right: 6, down: -8);
        plot.Say(34, Linear(34), "linear", "#a84800", "end", right: -8);
        plot.Say(49, Layers(49), "layers, each anew", "#006b4e", "end", down: -12);
        plot.Say(40, Power(40), "power law", "#00588a", right: 0, down: 26);
        foreach (double tick in new[] { 0.0, 10, 20, 30, 40, 50 })
        {
            plot.AcrossTick(tick, Text(tick));
        }

        foreach (double tick in new[] { 0.0, 25, 50, 75, 100 })
        {
            plot.UpTick(tick, Text(tick));
        }

        plot.AxisNames("time, a", "loss, um");
        Hold("loss-laws.svg", plot);
    }

    private static string Text(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    // Written when the switch is 1, compared otherwise; a page must show it.
    private static void Hold(string file, SvgPlot plot) => Hold(file, plot.ToString());

    private static void Hold(string file, string drawn)
    {
        string path = Path.Combine(Repository.Docs, "images", file);
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            File.WriteAllText(path, drawn);
            return;
        }

        Assert.True(File.Exists(path) && File.ReadAllText(path).ReplaceLineEndings("\n") == drawn, $"docs/images/{file} is not current. Write it anew: {Switch}=1 dotnet run --project tests/SacrificialTape.Docs.Tests");
        Assert.Contains(Repository.Pages, page => Repository.Read(page).Contains($"](images/{file})", StringComparison.Ordinal));
    }
}
