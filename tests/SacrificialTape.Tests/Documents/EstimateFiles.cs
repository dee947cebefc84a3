using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Json.Schema;
using SacrificialTape.Documents;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>Estimates come back from their file as they went in, and tell what differs when they are worked out again.</summary>
public sealed class EstimateFiles
{
    private static readonly DateOnly Day = new(2031, 5, 4);
    private static readonly JsonSchema Published = Schema();

    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "\"on\": \"2031-05-04\"", "\"on\": \"4.5.2031\"", "$.on", "Expected year-month-day" },
        { "\"library\": \"", "\"libary\": \"", "$", "'library' is missing" },
        { "\"covered\": \"", "\"covered\": \"x", "$.results.totals.covered", "x" },
        { "\"lay\": \"ring\"", "\"lay\": \"weld\"", "$.work[0]", "No norm of the job's prices says how long this work takes: weld, by hand, pipe" },
        { "\"severity\": \"note\"", "\"severity\": \"hint\"", "$.results.lines[0].findings[0].severity", "'hint' is not known" },
        { "\"rolls\": ", "\"rolls\": 1.", "$.results.totals.rolls", "must be a whole number" },
        { "\"rolls\": [", "\"rolls\": [], \"own\": [", "$.job.prices.own[0]", "'kind' is missing" },
        { "\"earliest\": \"", "\"earliest\": \"-", "$.results.lines[0].earliest", "outside the accepted range" },
        { "\"until\": \"2031-12-31\"", "\"until\": \"2030-12-31\"", "$.waivers[0].until", "'until' is before 'on'" },
        { "\"firstCost\": \"", "\"firstCost\": \"about ", "$.results.firstCost", "is not an amount of money" },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"168,3 mm\"", "$.job.lines[0].lay.surface.outsideDiameter", "has a comma in the number" },
        { "\"prices\": {", "\"price\": {", "$.job.price", "'price' is not known here" },
        { "\"document\": \"estimate\"", "\"document\": \"job\"", "$.document", "Expected 'estimate'" },
        { "\"document\": \"job\"", "\"document\": \"rule set\"", "$.job.document", "Expected 'job'" },
    };

    private static string Whole { get; } = Small().Write();

    [Property(MaxTest = 6)]
    public Property Reading_what_was_written_gives_the_same_document() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        EstimateDocument document = Any(seed);
        string text = document.Write(AnyJob.Forms);
        EstimateDocument read = EstimateDocument.Read(text, [TeamSet.Small], AnyJob.Forms);
        Assert.Equal(document, read);
        Assert.Equal(text, read.Write(AnyJob.Forms));
        Assert.Empty(read.Differences());
    });

    [Property(MaxTest = 30)]
    public Property A_change_is_told_or_is_another_estimate() => Prop.ForAll(
        AnyJob.Seeds, static seed => Slip.AnywhereIsToldOrAnother(Whole, seed, static text => EstimateDocument.Read(text), static read => read.Write()));

    [Fact]
    public void Whatever_is_written_fits_the_schema()
    {
        using var json = JsonDocument.Parse(Whole);
        Assert.True(Published.Evaluate(json.RootElement).IsValid, Whole);
        using var wrong = JsonDocument.Parse(Whole.Replace("\"rolls\"", "\"roles\"", StringComparison.Ordinal));
        Assert.False(Published.Evaluate(wrong.RootElement).IsValid);
        using var inside = JsonDocument.Parse(Whole.Replace("\"takeOff\"", "\"takeoff\"", StringComparison.Ordinal));
        Assert.False(Published.Evaluate(inside.RootElement).IsValid);
    }

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_told_at_its_place(string right, string wrong, string path, string said) =>
        Slip.IsTold(() => EstimateDocument.Read(Slip.In(Whole, right, wrong)), path, said);

    // By hand: each change of a stated result is told, at its place, and nothing else.
    [Fact]
    public void What_differs_is_told()
    {
        StatedResults stated = Small().Results;
        StatedLine line = stated.Lines[0];
        Assert.Equal("line 'A', strip", Moved($"\"leftClear\": \"0 m2\",\n        \"strip\": \"{Shown("strip")}\"", "\"leftClear\": \"0 m2\",\n        \"strip\": \"7 m\"").Place);
        Assert.Equal("line 'A', life holds", Moved("\"lifeHolds\": true,", string.Empty).Place);
        EstimateDifference all = Moved($"\"rolls\": {stated.Totals.Rolls}", $"\"rolls\": {stated.Totals.Rolls + 1}");
        Assert.Equal("job, rolls", all.Place);
        EstimateDifference rolls = Moved($"\"rolls\": {stated.Stocks[0].Rolls},\n        \"least", $"\"rolls\": {stated.Stocks[0].Rolls + 1},\n        \"least");
        Assert.Equal(("stock 'stock 1', rolls", $"{stated.Stocks[0].Rolls + 1}", $"{stated.Stocks[0].Rolls}"), (rolls.Place, rolls.Stated, rolls.Now));
        EstimateDifference severity = Moved("\"severity\": \"note\"", "\"severity\": \"stop\"", 2);
        Assert.Equal("line 'A', finding", severity.Place);
        Assert.StartsWith("Stop [", severity.Stated, StringComparison.Ordinal);
        Assert.Equal("job, zinc laid", Moved($"\"zincLaid\": \"{Shown("zincLaid")}\"", "\"zincLaid\": \"7 kg\"").Place);
        Assert.Equal("job, first cost", Moved($"\"firstCost\": \"{Shown("firstCost")}\"", "\"firstCost\": \"1 EUR\"").Place);

        // What is said of a finding may be worded anew without a difference; a last digit too.
        Assert.Empty(EstimateDocument.Read(Whole.Replace(line.Findings[0].Message, "worded anew", StringComparison.Ordinal)).Differences());
        Assert.Empty(EstimateDocument.Read(Whole.Replace($"\"covered\": \"{Shown("covered")}\"", $"\"covered\": \"{UnitConversions.SquareMeters(line.Covered.ToArea()) * (1 + 1e-12):R} m2\"", StringComparison.Ordinal)).Differences());

        // A line that the file states and the job does not have.
        ValueList<EstimateDifference> renamed = EstimateDocument.Read(Slip.In(Whole, "\"tag\": \"A\"", "\"tag\": \"B\"")).Differences();
        Assert.Equal(["line 'B'", "line 'A'"], renamed.Take(2).Select(static one => one.Place));
    }

    [Fact]
    public void What_was_costed_comes_back_too()
    {
        EstimateDocument read = EstimateDocument.Read(Whole);
        Assert.Equal(Small(), read);
        Assert.Equal(Whole, read.Write());
        Assert.Empty(read.Differences());

        // Half an hour a square metre at 45 EUR, and rolls at 80.50 EUR.
        decimal byHand = (80.50m * read.Results.Stocks[0].Rolls) + (decimal)(Math.PI * 0.1683 * 3 * 0.5 * 45);
        Assert.True(Math.Abs(byHand - read.Results.FirstCost!.Value.Amount) < 1e-6m, $"{byHand}, {read.Results.FirstCost}");
    }

    // One in the results, one in the job within: both in one run.
    [Fact]
    public void Faults_of_results_and_of_the_job_are_told_at_once()
    {
        string line = Whole[(Whole.IndexOf("\"lines\": [", StringComparison.Ordinal) + 10)..Whole.IndexOf("\"stocks\"", StringComparison.Ordinal)].TrimEnd().TrimEnd(',').TrimEnd().TrimEnd(']').Trim();
        string twice = Slip.In(Slip.In(Whole, line, line + ", " + line), "168.3 mm", "168,3 mm");
        DocumentException refused = Assert.Throws<DocumentException>(() => EstimateDocument.Read(twice));
        Assert.Equal(["$.results.lines[1].tag", "$.job.lines[0].lay.surface.outsideDiameter"], refused.Faults.Select(static fault => fault.Path));
    }

    // A square metre, a metre and a kilogram counted from the parts.
    [Property(MaxTest = 4)]
    public Property Totals_are_the_sums_of_lines_and_stocks() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        StatedResults results = new EstimateDocument(AnyJob.Make(seed), Day).Results;
        Near(results.Lines.Sum(static line => line.Covered.ToArea().SquareMeters), results.Totals.Covered.ToArea().SquareMeters);
        Near(results.Lines.Sum(static line => line.LeftClear.ToArea().SquareMeters), results.Totals.LeftClear.ToArea().SquareMeters);
        Near(results.Lines.Sum(static line => line.StripLength.ToLength().Meters), results.Totals.StripLength.ToLength().Meters);
        Near(results.Stocks.Sum(static stock => stock.ZincBought.Number), results.Totals.ZincBought.Number);
        Near(results.Stocks.Sum(static stock => stock.ZincLaid.Number), results.Totals.ZincLaid.Number);
        Assert.Equal(results.Stocks.Sum(static stock => stock.Rolls), results.Totals.Rolls);
        static void Near(double wanted, double got) => Assert.True(Math.Abs(wanted - got) <= 1e-9 * (1 + Math.Abs(wanted)), $"{wanted}, {got}");
    });

    // A stop that the team has waived in the rules that the job states: it stays among the results and is no longer open.
    [Fact]
    public void Waivers_of_stated_rules_count()
    {
        Job job = Small().Job.Job;
        RuleSet rules = RuleSet.Default.With("hard", "1", RuleSet.Default[RuleIds.NoPublishedLife].WithSeverity(Severity.Stop, Basis.Judgement("invented")));
        var waiver = new Waiver(RuleIds.NoPublishedLife, "A", "agreed with the owner", "P. Erson", Day);
        var stated = new RuleSetDocument(rules, RuleSet.Default, [new RuleApproval(RuleIds.NoPublishedLife, "A. Person", Day)], [waiver], RuleSetDocument.Reference.Cases.Take(2));
        var document = new JobDocument(job.Under(rules), rulesDocument: stated);
        var read = JobDocument.Read(document.Write());
        Assert.Equal(stated, read.RulesDocument);
        Assert.Equal(document.Write(), read.Write());
        Assert.DoesNotContain(RuleIds.MinimumLap, document.Write(), StringComparison.Ordinal); // what differs, not every rule
        var estimate = new EstimateDocument(read, Day);
        Assert.DoesNotContain(estimate.Findings().Open, static one => one.Severity == Severity.Stop);
        Assert.Equal(waiver, Assert.Single(estimate.Findings().Waived).Waiver);
        Assert.Contains(estimate.Results.Lines[0].Findings, static one => one.Severity == Severity.Stop);
        // Given beside the job too it is still one, and stands once in the file.
        var twice = new EstimateDocument(read, Day, waivers: [waiver, new Waiver(RuleIds.MinimumLap, "A", "w", "p", Day)]);
        Assert.Equal([RuleIds.NoPublishedLife, RuleIds.MinimumLap], twice.Waivers.Select(static one => one.RuleId));
        Assert.Equal(twice, EstimateDocument.Read(twice.Write()));
        Assert.Equal(2, twice.Write().Split("\"agreed with the owner\"").Length);
        // Not on the day before it was given.
        Assert.Contains(new EstimateDocument(read, Day.AddDays(-1)).Findings().Open, static one => one.Severity == Severity.Stop);
    }

    [Fact]
    public void Rules_that_are_stated_are_those_of_the_job()
    {
        Job job = Small().Job.Job;
        Assert.Contains("judged is by", Assert.Throws<ArgumentException>(() => new JobDocument(job, rulesDocument: new RuleSetDocument(TeamSet.Small))).Message, StringComparison.Ordinal);
        Assert.Null(new JobDocument(job).RulesDocument);
        Assert.Equal(new RuleSetDocument(RuleSet.Default), new JobDocument(job, statesRules: true).RulesDocument);
    }

    [Fact]
    public void A_document_is_worked_out_once()
    {
        EstimateDocument read = EstimateDocument.Read(Whole);
        Assert.Same(read.Estimate(), read.Estimate());
        Assert.Equal(read.Results.FirstCost, read.Cost()!.FirstCost);
        Assert.Null(new EstimateDocument(Small().Job, Day).Cost());
        Assert.Equal(read.Estimate().ShowWorkings().Steps.Count, read.ShowWorkings().Steps.Count);
    }

    [Fact]
    public void Work_without_prices_is_refused()
    {
        var job = new JobDocument(Small().Job.Job);
        ArgumentException refused = Assert.Throws<ArgumentException>(() => new EstimateDocument(job, Day, Small().Work));
        Assert.Contains("no prices", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_of_the_job_stay_as_given()
    {
        string text = Whole.Replace("\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"0.1683 m\"", StringComparison.Ordinal);
        EstimateDocument read = EstimateDocument.Read(text);
        Assert.Equal(text, read.Write());
        Assert.Empty(read.Differences());
    }

    private static EstimateDocument Any(int seed)
    {
        JobDocument job = AnyJob.Make(seed);
        LabourWork[] work = job.Prices is not null
            ? [new LabourWork(new LabourKind(StripPurpose.Ring, ApplicationMethod.ByHand, "pipe"), Area.FromSquareMeters(3.3), Length.FromMeters(70.07), 17)]
            : [];
        return new EstimateDocument(job, Day, work, [new Waiver(RuleIds.MinimumLap, "somewhere", "why", "who", Day, Day.AddDays(seed % 7))]);
    }

    private static EstimateDocument Small()
    {
        var stock = new StripStock(new Tape(new Foil(Mm(0.1)), new Adhesive(Mm(0.025))), Mm(100), Length.FromMeters(50));
        var pipe = new StraightPipe(Mm(168.3), Length.FromMeters(3));
        var lay = new RingLay(pipe, stock, Mm(15));
        var line = new SurveyLine("A", lay, ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(UnitsNet.Duration.FromYears365(20)));
        var kind = new LabourKind(StripPurpose.Ring, ApplicationMethod.ByHand, "pipe");
        var prices = new CostPrices(
            [new RollPrice(stock, new Money(80.50m, "EUR"))],
            new LabourRate(new Money(45, "EUR")),
            [new LabourNorm(kind, LabourMeasure.Area, UnitsNet.Duration.FromHours(0.5))],
            [],
            []);
        var job = new Job("j", [line], TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05)));
        return new EstimateDocument(new JobDocument(job, prices), Day, [LabourWork.Of(lay, kind)], [new Waiver(RuleIds.NoPublishedLife, "A", "agreed with the owner", "P. Erson", Day, new DateOnly(2031, 12, 31))]);
    }

    private static EstimateDifference Moved(string from, string to, int times = 1) =>
        EstimateDocument.Read(Slip.In(Whole, from, to)).Differences() is { } all && all.Count == times ? all[0] : throw new InvalidOperationException($"{from} to {to}: {string.Join("; ", EstimateDocument.Read(Slip.In(Whole, from, to)).Differences())}");

    private static string Shown(string member)
    {
        int at = Whole.IndexOf($"\"{member}\": \"", StringComparison.Ordinal) + member.Length + 5;
        return Whole[at..Whole.IndexOf('"', at)];
    }

    private static JsonSchema Schema()
    {
        _ = JobSchema.Published; // the schema of the job is referred to by its address
        return JsonSchema.FromFile(Path.Combine(AppContext.BaseDirectory, "schemas", "estimate-1.json"));
    }
}
