using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

public sealed class JobTests
{
    [Fact]
    public void An_estimate_adds_up()
    {
        JobEstimate estimate = SampleJob.Make().Estimate();
        Assert.Equal(estimate.Job.Lines.Select(static line => line.Tag), estimate.Lines.Select(static line => line.Line.Tag));
        Near.Equal(estimate.Lines.Sum(static line => line.StripLength.Meters), estimate.StripLength.Meters, 1e-12);
        Near.Equal(estimate.TakeOff.Stocks.Sum(static one => one.Ledger.NeededUm), estimate.StripLength.Micrometers, 1e-12);
        Near.Equal(
            Math.PI * ((0.0603 * 4.3215) + (0.1683 * 12.3456) + (1.219 * 2.5005) + (0.273 * 6)), estimate.Covered.SquareMeters + estimate.LeftClear.SquareMeters, 1e-12);
        Near.Equal((0.1005 * 0.0605) + (2 * Math.PI * 0.0465 * 0.0465 / 4), estimate.LeftClear.SquareMeters, 1e-12);
        Assert.Equal(estimate.Lines.Sum(static line => line.Findings.Count) + estimate.GeneralFindings.Count, estimate.Findings.Count);
    }

    [Fact]
    public void Findings_name_the_line_they_belong_to()
    {
        JobEstimate estimate = SampleJob.Make().Estimate();
        Assert.All(estimate.Lines, static line => Assert.All(line.Findings, one => Assert.Equal(line.Line.Tag, one.Subject)));
        string[] first = [.. estimate.Lines[0].Findings.Select(static one => one.Rule.Id)];
        Assert.Contains(RuleIds.WetTemperatureWarning, first);
        Assert.Contains(RuleIds.MinimumBareRatio, first);
        Assert.Contains(RuleIds.OldPaint, first);
        Assert.Contains(estimate.Lines[1].Findings, static one => one.Rule.Id == RuleIds.LayersAsked && one.Measured == new Measure(1, TradeUnit.One));
        Assert.Contains(estimate.Lines[2].Findings, static one => one.Rule.Id == RuleIds.StainlessSteel && one.Severity == Severity.Stop);
        Assert.Contains(estimate.Lines[3].Findings, static one => one.Rule.Id == RuleIds.FacingFilm);
    }

    [Theory]
    [InlineData(49.9, true, null)]
    [InlineData(50, true, RuleIds.WetTemperatureWarning)]
    [InlineData(59.9, true, RuleIds.WetTemperatureWarning)]
    [InlineData(60, true, RuleIds.WetTemperatureStop)]
    [InlineData(75, false, null)]
    [InlineData(80.1, false, RuleIds.AdhesiveServiceTemperature)]
    public void Temperature_is_judged_wet_or_dry(double celsius, bool wet, string? rule) => Assert.Equal(
        rule, Findings(new SteelCondition(serviceTemperature: Temperature.FromDegreesCelsius(celsius), wetInService: wet))
            .Select(static one => one.Rule.Id)
            .SingleOrDefault(static id => id.StartsWith("service.", StringComparison.Ordinal) || id == RuleIds.AdhesiveServiceTemperature));

    [Theory]
    [InlineData(SubstrateMetal.Magnesium, RuleIds.Magnesium)]
    [InlineData(SubstrateMetal.StainlessSteel, RuleIds.StainlessSteel)]
    [InlineData(SubstrateMetal.HighStrengthSteel, RuleIds.HighStrengthSteel)]
    public void A_metal_that_zinc_can_harm_stops_the_work(SubstrateMetal metal, string rule) => Assert.Contains(
        Findings(new SteelCondition(metal)), one => one.Rule.Id == rule && one.Severity == Severity.Stop);

    [Fact]
    public void The_crew_cleans_first_and_looks_last()
    {
        ValueList<CrewStep> steps = SampleJob.Make().Estimate().Lines[0].CrewSteps;

        // Nothing to heed and no paint on this line; with both the order is tested beside them.
        Assert.Equal(Enum.GetValues<CrewActivity>().Except([CrewActivity.Stop, CrewActivity.Cautions, CrewActivity.Paint]), steps.Select(static step => step.Activity));
        Assert.Contains("0.20 m long on each of 2 weld(s) round the pipe", steps[3].Text, StringComparison.Ordinal);
        Assert.Contains("3 contact window(s) of 12.5 cm2", steps[2].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_must_not_be_taped_tells_the_crew_that_and_nothing_else()
    {
        LineEstimate stopped = SampleJob.Make().Estimate().Lines[2];
        Assert.Contains(stopped.Findings, static one => one.Severity == Severity.Stop);
        Assert.All(stopped.CrewSteps, static step => Assert.Equal(CrewActivity.Stop, step.Activity));
        Assert.Equal(stopped.Findings.Count(static one => one.Severity == Severity.Stop), stopped.CrewSteps.Count);
    }

    [Fact]
    public void Bad_surveys_are_refused()
    {
        SurveyLine line = Line("A-1");
        Assert.Contains("at least one survey line", Assert.Throws<ArgumentException>(() => new Job("j", [], Make.TakeOff())).Message, StringComparison.Ordinal);
        Assert.Contains("'A-1' stands twice", Assert.Throws<ArgumentException>(() => new Job("j", [line, Line("A-1")], Make.TakeOff())).Message, StringComparison.Ordinal);
        Assert.Equal("tag", Assert.Throws<ArgumentException>(static () => Line("")).ParamName);
        Assert.Equal("tag", Assert.Throws<ArgumentException>(static () => Line(" ")).ParamName);
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => new Job(" ", [line], Make.TakeOff())).ParamName);
        Assert.Contains("at least one seam", Assert.Throws<ArgumentException>(static () => new WeldWork([], Stock(), Mm(10))).Message, StringComparison.Ordinal);
        Errors.Refused(static () => Line("A", 0), "requiredLife", "0 a", "more than 0 a");
        Errors.Refused(static () => Line("A", 10, 0), "layersWanted", "0 layers", "at least 1 and at most 20 layers");
        Errors.Refused(static () => new SteelCondition(serviceTemperature: Temperature.FromDegreesCelsius(500)), "serviceTemperature", "500 degC", "at least -60 and at most 400 degC");
        Errors.Refused(static () => new SteelCondition((SubstrateMetal)99), "metal", "Not a metal known here");
    }

    private static ValueList<Finding> Findings(SteelCondition steel) =>
        new Job("j", [Line("A-1", 10, 1, steel)], Make.TakeOff()).Estimate().Lines[0].Findings;

    private static SurveyLine Line(string tag, double years = 10, int layers = 1, SteelCondition? steel = null) => new(
        tag, new RingLay(Pipe(), Stock(), Mm(20)), ZincExposure.FromCategory(CorrosivityCategory.C2), Lifetime.Of(Duration.FromYears365(years)), steel, null, layers);
}
