using FsCheck.Xunit;

namespace SacrificialTape.Tests.Exposure;

[Properties(Arbitrary = [typeof(ExposureCases)], MaxTest = 500)]
public sealed class DoseResponses
{
    private static readonly Metal[] Metals = Enum.GetValues<Metal>();

    [Property]
    public void More_sulfur_dioxide_chloride_or_humidity_never_slows_it(SiteCase given, byte more)
    {
        double factor = 1 + ((more + 1) / 100.0);
        foreach (Metal metal in Metals)
        {
            double Rate(SiteCase site) => new DoseResponse(metal, site.Air(), BeyondFit.AcceptWithFinding).Rate.MicrometersPerYear;
            double rate = Rate(given);
            Assert.True(rate > 0);
            Assert.True(Rate(given with { Sulfur = given.Sulfur * factor }) > rate);
            Assert.True(Rate(given with { Chloride = given.Chloride * factor }) > rate);
            Assert.True(Rate(given with { Percent = Math.Min(100, given.Percent * factor) }) > rate);
        }
    }

    [Fact]
    public void At_ten_degrees_the_term_of_warmth_is_zero_and_not_below()
    {
        foreach (Metal metal in Metals)
        {
            WorkingStep warmth = new DoseResponse(metal, new SiteCase(10, 70, 10, 20).Air()).ShowWorkings().Steps[0];
            Assert.True(warmth.Formula == ExposureFormulas.ZincWarmth || warmth.Formula == ExposureFormulas.SteelWarmth);
            Assert.Equal(0, warmth.Result.Number);
            Assert.False(double.IsNegative(warmth.Result.Number));
        }
    }

    [Property]
    public void Warmth_turns_at_ten_degrees_without_a_step(SiteCase given)
    {
        foreach (Metal metal in Metals)
        {
            DoseResponse At(double celsius) => new(metal, (given with { Celsius = celsius }).Air());
            Near.Equal(At(10).Rate.MicrometersPerYear, At(10 + 1e-9).Rate.MicrometersPerYear, 1e-9);
            Near.Equal(At(10).Rate.MicrometersPerYear, At(10 - 1e-9).Rate.MicrometersPerYear, 1e-9);

            // Sulfur dioxide works most at ten degrees, chloride more the warmer it is.
            Assert.True(At(10).BySulfurDioxide >= new DoseResponse(metal, given.Air()).BySulfurDioxide);
            Assert.True(At(28).ByChloride > At(10).ByChloride && At(10).ByChloride > At(-10).ByChloride);
        }
    }

    [Property]
    public void The_parts_make_the_whole_and_the_interval_is_symmetric_in_its_logarithm(SiteCase given)
    {
        foreach (Metal metal in Metals)
        {
            var estimate = new DoseResponse(metal, given.Air());
            double rate = estimate.Rate.MicrometersPerYear;
            Near.Equal(rate, estimate.BySulfurDioxide.MicrometersPerYear + estimate.ByChloride.MicrometersPerYear, 1e-15);
            RateRange range = estimate.LogNormal.Range;
            Near.Equal(rate * 1.5, range.Highest.MicrometersPerYear, 1e-14);
            Near.Equal(rate / 1.5, range.Lowest.MicrometersPerYear, 1e-14);
            Near.Equal(rate, Math.Sqrt(range.Lowest.MicrometersPerYear * range.Highest.MicrometersPerYear), 1e-14);
            Assert.Equal(Corrosivity.CategoryOf(estimate.Rate, metal), estimate.Category);
            ZincExposure? exposure = metal == Metal.Zinc ? ZincExposure.From(FirstYearRate.From(estimate)) : null;
            Assert.Equal(metal == Metal.Zinc ? estimate.LogNormal : null, exposure?.LogNormal);
        }
    }

    [Property]
    public void The_unit_of_what_goes_in_does_not_matter(SiteCase given)
    {
        var other = new AnnualAtmosphere(
            Temperature.FromDegreesFahrenheit((given.Celsius * 1.8) + 32),
            RelativeHumidity.FromPercent(given.Percent),
            DepositionRate.FromMilligramsPerSquareMeterDay(given.Sulfur),
            DepositionRate.FromMilligramsPerSquareMeterDay(given.Chloride));
        foreach (Metal metal in Metals)
        {
            Near.Equal(
                new DoseResponse(metal, given.Air()).Rate.MicrometersPerYear,
                new DoseResponse(metal, other, BeyondFit.AcceptWithFinding).Rate.MicrometersPerYear,
                1e-12);
        }
    }

    [Theory]
    [InlineData(-17.2, 70, 5, 10, "-17.2 degC", "Temperature", "-17.1 degC")]
    [InlineData(28.8, 70, 5, 10, "28.8 degC", "Temperature", "28.7 degC")]
    [InlineData(10, 33.9, 5, 10, "33.9 %", "Humidity", "34 %")]
    [InlineData(10, 93.1, 5, 10, "93.1 %", "Humidity", "93 %")]
    [InlineData(10, 70, 0.6, 10, "0.6 mg/(m2.d)", "SulfurDioxide", "0.7 mg/(m2.d)")]
    [InlineData(10, 70, 150.5, 10, "150.5 mg/(m2.d)", "SulfurDioxide", "150.4 mg/(m2.d)")]
    [InlineData(10, 70, 5, 0.3, "0.3 mg/(m2.d)", "Chloride", "0.4 mg/(m2.d)")]
    [InlineData(10, 70, 5, 761, "761 mg/(m2.d)", "Chloride", "760.5 mg/(m2.d)")]
    public void Outside_its_data_it_refuses_or_leaves_a_finding(
        double celsius, double percent, double sulfur, double chloride, string value, string input, string bound)
    {
        AnnualAtmosphere air = SiteCase.Of(celsius, percent, sulfur, chloride);
        foreach (Metal metal in Metals)
        {
            Errors.Refused(() => new DoseResponse(metal, air), "atmosphere", value, input, bound.Split(' ')[0], "AcceptWithFinding");
            FirstYearRate rate = FirstYearRate.From(new DoseResponse(metal, air, BeyondFit.AcceptWithFinding));
            Finding finding = Assert.Single(rate.Judge(RuleSet.Default, "A-1"), static one => one.Rule.Id == RuleIds.RateBeyondFit);
            Assert.Equal((value, bound), (finding.Measured.ToString(), finding.Limit.ToString()));
        }
    }

    [Fact]
    public void On_the_edge_of_its_data_it_holds()
    {
        foreach (AnnualAtmosphere air in new[] { SiteCase.Of(-17.1, 34, 0.7, 0.4), SiteCase.Of(28.7, 93, 150.4, 760.5) })
        {
            FirstYearRate rate = FirstYearRate.From(new DoseResponse(Metal.CarbonSteel, air, BeyondFit.AcceptWithFinding));
            Assert.DoesNotContain(rate.Judge(RuleSet.Default, "A-1"), static one => one.Rule.Id == RuleIds.RateBeyondFit);
            Assert.Equal(new DoseResponse(Metal.CarbonSteel, air).Rate.MicrometersPerYear, rate.LogNormal!.Value.Median.MicrometersPerYear);
        }
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        AnnualAtmosphere air = SiteCase.Of(10, 70, 5, 10);
        Errors.Refused(() => new DoseResponse((Metal)7, air), "metal");
        Errors.Refused(() => new DoseResponse(Metal.Zinc, air, (BeyondFit)2), "beyond");
        Errors.Refused(static () => SiteCase.Of(10, 101, 5, 10), "humidity", "101 %", "at most 100 %");
        Errors.Refused(static () => SiteCase.Of(-91, 70, 5, 10), "temperature", "-91 degC", "at least -90");
        Errors.Refused(static () => LogSpread.FromValue(-0.1), "value", "-0.1", "at least 0");
        Assert.Throws<InvalidOperationException>(static () => new AnnualAtmosphere(
            Temperature.FromDegreesCelsius(10), RelativeHumidity.FromPercent(70), default, DepositionRate.FromMilligramsPerSquareMeterDay(1)));
        Assert.Throws<InvalidOperationException>(static () => new LogNormalRate(default, LogSpread.FromValue(1)));
    }
}
