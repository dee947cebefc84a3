using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>Every fault of a job is told, with its place and what was expected.</summary>
public sealed class FaultyJobs
{
    private static readonly string[] SeenBySchema =
    [
        "has a comma", "with their unit", "not null", "is not known here", "Use a newer library", "must be a whole number", "This is a 'rule set'",
        "is empty", "is missing", "is no fingerprint", "Expected a list", "without quotes", "is not known. Expected", "must be true or false",
        "of kind 'tube'", "at least one survey line", "Expected an object", "is not an amount",
    ];

    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"168,3 mm\"", "$.lines[0].lay.surface.outsideDiameter", "has a comma in the number" },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": 168.3", "$.lines[0].lay.surface.outsideDiameter", "Write numbers as text with their unit" },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"168.3 kg\"", "$.lines[0].lay.surface.outsideDiameter", "does not measure what 'outsideDiameter' is: expected a number with a unit, as in '20 mm'; units that do: um, mm, cm, m, in, ft." },
        { "\"requiredLife\": \"20 a\"", "\"requiredLife\": \"20 years\"", "$.lines[0].requiredLife", "'20 years' has no unit known here: 'years'. Case counts; units that do: a, h." },
        { "\"contingency\": \"0.05\"", "\"contingency\": \"5 mm\"", "$.takeOff.contingency", "expected a number without unit, as in '0.5'; units that do: none (a plain number), %." },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"-168.3 mm\"", "$.lines[0].lay.surface.outsideDiameter", "-168.3 mm is outside the accepted range: at least 1 and at most 100000 mm" },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"1e400 mm\"", "$.lines[0].lay.surface.outsideDiameter", "does not start with a finite number" },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"1e308 m\"", "$.lines[0].lay.surface.outsideDiameter", "is too large a number" },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": null", "$.lines[0].lay.surface.outsideDiameter", "must be a text, not null" },
        { "\"outsideDiameter\": \"168.3 mm\",", string.Empty, "$.lines[0].lay.surface", "'outsideDiameter' is missing: a number with its unit" },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"168.3 mm\", \"outsideDiameter\": \"168.3 mm\"", "$.lines[0].lay.surface.outsideDiameter", "stands twice in this object" },
        { "\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"168.3 mm\", \"wall\": \"7 mm\"", "$.lines[0].lay.surface.wall", "is not known here. Expected kind, length, outsideDiameter" },
        { "\"kind\": \"pipe\"", "\"kind\": \"tube\"", "$.lines[0].lay.surface.kind", "No surface of kind 'tube' is known here. Known are I section, T section, angle section, annular panel" },
        { "\"kind\": \"pipe\"", "\"kind\": \"piep\"", "$.lines[0].lay.surface.kind", "No surface of kind 'piep' is known here. Known are" },
        { "\"kind\": \"pipe\"", "\"kind\": \"strap\"", "$.lines[0].lay.surface.kind", "No surface of kind 'strap' is known here. Nearest is 'pipe strap'. A kind of your own" },
        { "{\n          \"kind\": \"pipe\"", "{\n          \"kind\": \"I section\", \"size\": \"IPE 205\", \"length\": \"1 m\"}, \"x\": {\n          \"kind\": \"pipe\"", "$.lines[0].lay.surface.size", "'IPE 205' is not among the sizes of this kind that are known here; the nearest are IPE 200, " },
        { "{\n          \"kind\": \"pipe\"", "{\n          \"kind\": \"channel\", \"size\": \"ipe200\", \"length\": \"1 m\"}, \"x\": {\n          \"kind\": \"pipe\"", "$.lines[0].lay.surface.size", "IPE 200 is a section of another kind" },
        { "\"kind\": \"rings\"", "\"kind\": \"panel\"", "$.lines[0].lay.surface", "A surface of kind 'pipe' does not do here. Expected annular panel, circular panel, rectangular panel." },
        { "\"stock\": \"wide\"", "\"stock\": \"wild\"", "$.lines[0].lay.stock", "The document has no stock 'wild'. Known are 'wide'." },
        { "\"leastLap\": \"15 mm\"", "\"leastLap\": \"100 mm\"", "$.lines[0].lay.leastLap", "100 mm is outside the accepted range" },
        { "\"passes\": 2", "\"passes\": \"2\"", "$.lines[0].lay.choices.passes", "must be a whole number without quotes" },
        { "\"passes\": 2", "\"passes\": 2.5", "$.lines[0].lay.choices.passes", "must be a whole number without quotes" },
        { "\"passes\": 2", "\"passes\": 21", "$.lines[0].lay.choices.passes", "21 passes is outside the accepted range" },
        { "\"requiredLife\": \"20 a\"", "\"requiredLife\": \"-1 a\"", "$.lines[0].requiredLife", "at least 0 a, or 'unlimited'" },
        { "\"requiredLife\": \"20 a\"", "\"requiredLife\": \"for ever\"", "$.lines[0].requiredLife", "does not start with a number" },
        { "\"requiredLife\": \"20 a\"", "\"requiredLife\": \"20 mm\"", "$.lines[0].requiredLife", "does not measure what 'requiredLife' is" },
        { "\"kind\": \"category\"", "\"kind\": \"class\"", "$.lines[0].exposure.kind", "'class' is not known. Expected 'category'" },
        { "\"name\": \"C3\"", "\"name\": \"C9\"", "$.lines[0].exposure.name", "'C9' is not known. Expected 'C1', 'C2'" },
        { "\"wetInService\": true", "\"wetInService\": \"yes\"", "$.lines[0].steel.wetInService", "must be true or false, not a text" },
        { "\"buried\"", "\"burried\"", "$.lines[0].steel.hazards.present[0]", "No hazard 'burried' is known. Nearest is 'buried'" },
        { "\"acidity\": \"7.5\"", "\"acidity\": \"17.5\"", "$.lines[0].steel.hazards.acidity", "17.5 is outside the accepted range" },
        { "\"along\": \"500 mm\"", "\"along\": \"99 m\"", "$.lines[0].windows", "outside the surface" },
        { "\"diameter\": \"30 mm\"", "\"diameter\": \"30 mm\", \"extentAlong\": \"3 mm\"", "$.lines[0].windows.at[0].extentAlong", "is not known here" },
        { "\"tag\": \"BR-102\"", "\"tag\": \"BR-101\"", "$.lines[1].tag", "The tag 'BR-101' stands twice" },
        { "\"line\": \"BR-101\"", "\"line\": \"BR-10\"", "$.notes[0].line", "The job has no line 'BR-10'" },
        { "\"perRoll\": \"80.50 EUR\"", "\"perRoll\": \"80,50 EUR\"", "$.prices.rolls[0].perRoll", "is not an amount of money" },
        { "\"perRoll\": \"80.50 EUR\"", "\"perRoll\": \"80.50 USD\"", "$.prices", "EUR and USD cannot be mixed" },
        { "\"contingency\": \"0.05\"", "\"contingency\": \"1.05\"", "$.takeOff.contingency", "1.05 is outside the accepted range: at least 0 and less than 1 (a fraction of 1)." },
        { "\"rolls\": [", "\"rolls\": [], \"own\": [", "$.prices.own[0]", "'kind' is missing" },
        { "\"shortestPiece\": \"1000 mm\"", "\"shortestPiece\": \"5 mm\"", "$.takeOff.shortestPiece", "5 mm is outside the accepted range" },
        { "\"schema\": 1", "\"schema\": 2", "$.schema", "The document is written by version 2 of its format; this library reads up to 1. Use a newer library" },
        { "\"schema\": 1", "\"schema\": 0", "$.schema", "must be a whole number" },
        { "\"document\": \"job\"", "\"document\": \"rule set\"", "$.document", "This is a 'rule set'. Expected 'job'" },
        { "\"fingerprint\": \"sha256:", "\"fingerprint\": \"sha256:0", "$.rules.fingerprint", "is no fingerprint" },
        { "\"version\": \"1\"", "\"version\": \"77\"", "$.rules", "'SacrificialTape common practice', version '77', is not at hand" },
        { "\"name\": \"Invented works\"", "\"name\": \" \"", "$.name", "'name' is empty" },
        { "\"lines\": [", "\"lines\": [], \"rest\": [", "$.lines", "A job needs at least one survey line" },
        { "\"lines\": [", "\"lines\": 3, \"rest\": [", "$.lines", "Expected a list, not a number" },
        { "\"foil\": {", "\"foil\": 3, \"x\": {", "$.stocks[0].foil", "Expected an object, not a number" },
    };

    public static TheoryData<string> Structural => [.. Slips
        .Where(static row => Array.Exists(SeenBySchema, said => row.Data.Item4.Contains(said, StringComparison.Ordinal)))
        .Select(static row => With(row.Data.Item1, row.Data.Item2))];

    internal static string Whole { get; } = Small().Write();

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_told_at_its_place(string right, string wrong, string path, string said)
    {
        DocumentException refused = Assert.Throws<DocumentException>(() => JobDocument.Read(With(right, wrong)));
        DocumentFault fault = Assert.Single(refused.Faults, fault => fault.Path == path && fault.Message.Contains(said, StringComparison.Ordinal));
        Assert.True(fault.Line >= 1 && fault.Column >= 1);
        Assert.DoesNotContain("Parameter", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_are_told_at_once()
    {
        string text = With("\"outsideDiameter\": \"168.3 mm\"", "\"outsideDiameter\": \"0 mm\"")
            .Replace("\"passes\": 2", "\"passes\": 0", StringComparison.Ordinal)
            .Replace("\"name\": \"C3\"", "\"name\": \"C9\"", StringComparison.Ordinal)
            .Replace("\"contingency\": \"0.05\"", "\"contingency\": \"2\"", StringComparison.Ordinal);
        Assert.Equal(
            ["$.takeOff.contingency", "$.lines[0].lay.surface.outsideDiameter", "$.lines[0].lay.choices.passes", "$.lines[0].exposure.name", "$.lines[1].exposure.name"],
            Assert.Throws<DocumentException>(() => JobDocument.Read(text)).Faults.Select(static fault => fault.Path));
    }

    [Fact]
    public void A_stock_that_a_line_uses_has_a_price()
    {
        JobDocument read = JobDocument.Read(Whole);
        StripStock narrow = new(read.Stocks[0].Stock.Tape, Tests.Make.Mm(50), read.Stocks[0].Stock.RollLength);
        string text = With("\"stocks\": [", "\"stocks\": [ { \"name\": \"narrow\", \"width\": \"50 mm\", \"rollLength\": \"10 m\", \"foil\": { \"thickness\": \"100 um\", \"density\": \"7140 kg/m3\" }, \"adhesive\": { \"thickness\": \"25 um\" } },");
        int at = text.LastIndexOf("\"stock\": \"wide\"", text.IndexOf("\"prices\"", StringComparison.Ordinal), StringComparison.Ordinal);
        text = string.Concat(text.AsSpan(0, at), "\"stock\": \"narrow\"", text.AsSpan(at + "\"stock\": \"wide\"".Length));
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => JobDocument.Read(text)).Faults);
        Assert.Equal(("$.prices.rolls", "The stock 'narrow', which line 'BR-102' uses, has no price. State one, or leave all prices out."), (fault.Path, fault.Message));
        SurveyLine first = read.Job.Lines[0];
        var other = new SurveyLine("BR-103", new RingLay(Tests.Make.Pipe(), narrow, Tests.Make.Mm(15)), first.Exposure, first.RequiredLife);
        ArgumentException refused = Assert.Throws<ArgumentException>(() => new JobDocument(new Job("j", [first, other], read.Job.TakeOff), read.Prices));
        Assert.Contains("which line 'BR-103' uses", refused.Message, StringComparison.Ordinal);
    }

    [Property(MaxTest = 400)]
    public Property Whatever_is_mutated_is_refused_at_a_place_or_read() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        var random = new Random(seed);
        char[] text = Whole.ToCharArray();
        for (int i = random.Next(3); i >= 0; i--)
        {
            text[random.Next(text.Length)] = " \"{}[]:,.0159emtrue-+\\u\0\u00E9"[random.Next(24)];
        }

        Holds(new string(text));
    });

    [Property(MaxTest = 200)]
    public Property Whatever_is_cut_out_or_doubled_is_refused_at_a_place_or_read() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        var random = new Random(seed);
        string[] lines = Whole.Split('\n');
        int at = random.Next(lines.Length);
        int other = random.Next(lines.Length);
        Holds(string.Join('\n', random.Next(3) switch
        {
            0 => lines.Where((_, i) => i != at),
            1 => lines.Select((line, i) => i == at ? line + "\n" + line : line),
            _ => lines.Select((line, i) => i == at ? lines[other] : line),
        }));
    });

    private static void Holds(string text)
    {
        JobDocument read;
        try
        {
            read = JobDocument.Read(text);
        }
        catch (DocumentException refused)
        {
            Assert.NotEmpty(refused.Faults);
            Assert.All(refused.Faults, static fault => Assert.True(fault.Line >= 1 && fault.Column >= 1 && fault.Path.StartsWith('$')));
            return;
        }

        Assert.Equal(read, JobDocument.Read(read.Write()));
    }

    private static string With(string right, string wrong)
    {
        int at = Whole.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0, right + " does not stand in the file.");
        return string.Concat(Whole.AsSpan(0, at), wrong, Whole.AsSpan(at + right.Length));
    }

    private static JobDocument Small()
    {
        StripStock stock = Tests.Make.Stock();
        var pipe = Tests.Make.Pipe();
        Lifetime life = Lifetime.Of(Duration.FromYears365(20));
        var steel = new SteelCondition(
            SubstrateMetal.HighStrengthSteel, null, Temperature.FromDegreesCelsius(45.5), true, LineOrientation.Vertical, new LineHazards([SiteHazard.Buried], Acidity.FromPh(7.5)));
        var windows = new WindowLayout(new UnrolledSurface(pipe), [ContactWindow.Disc(Tests.Make.Mm(500), Tests.Make.Mm(100), Tests.Make.Mm(30))]);
        var job = new Job(
            "Invented works",
            [
                new SurveyLine(new LineNeeds("BR-101", ZincExposure.FromCategory(CorrosivityCategory.C3), life, steel, windows: windows), new RingLay(pipe, stock, Tests.Make.Mm(15), Tests.Make.Choices(passes: 2))),
                new SurveyLine("BR-102", new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Tests.Make.Mm(15)), choices: Tests.Make.Choices()), ZincExposure.FromCategory(CorrosivityCategory.C3), life),
            ],
            Tests.Make.TakeOff());
        var prices = new CostPrices([new RollPrice(stock, new Money(80.50m, "EUR"))], new LabourRate(new Money(45, "EUR")), []);
        return new JobDocument(job, prices, [new JobNote("look at the support", "BR-101")], [new NamedStock("wide", stock)]);
    }
}
