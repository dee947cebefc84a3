using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Json.Schema;
using SacrificialTape.Documents;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>Records of jobs as built come back from their file as they went in, findings and signatures with them.</summary>
public sealed class AsBuiltFiles
{
    private static readonly JsonSchema Published = JsonSchema.FromFile(Path.Combine(AppContext.BaseDirectory, "schemas", "as-built-1.json"));

    public static TheoryData<string, string, string, string> Slips => new()
    {
        { "\"least\": \"7 mm\"", "\"least\": \"-1 mm\"", "$.lines[0].readings[0].least", "-1 mm is outside the accepted range" },
        { "\"least\": \"7 mm\"", "\"least\": \"7 g\"", "$.lines[0].readings[0].least", "does not measure what 'least' is" },
        { "\"point\": \"laps\"", "\"point\": \"lapse\"", "$.lines[0].readings[0].point", "'lapse' is not known" },
        { "\"found\": \"good\"", "\"found\": \"fine\"", "$.lines[0].readings[1].found", "Expected 'good', 'not good'" },
        { "\"at\": \"2031-05-04T10:00:00+02:00\"", "\"at\": \"2031-05-04 10:00\"", "$.lines[0].readings[0].at", "distance from UTC" },
        { "\"laidBy\": \"A\",", string.Empty, "$.lines[0]", "'laidBy' is missing" },
        { "\"name\": \"T-2\"", "\"name\": \"T-1\"", "$.plan[1].name", "The plan has line 'T-1' twice" },
        { "\"batches\": [", "\"batches\": [], \"more\": [", "$.lines[0].more", "'more' is not known here" },
        { "\"96.5 um\"", "\"965 mm\"", "$.lines[0].readings[2].thickness.readings", "is outside the accepted range" },
        { "\"96.5 um\"", "96.5", "$.lines[0].readings[2].thickness.readings[0]", "Expected a number with its unit" },
        { "\"word\": \"laid again\"", "\"word\": \" \"", "$.signatures[0].word", "'word' is empty" },
        { "\"measured\": \"7 mm\"", "\"measured\": \"13 mm\"", "$.signatures[0]", "no open finding" },
        { "\"schema\": 1", "\"schema\": 2", "$.schema", "Use a newer library" },
        { "\"document\": \"as-built record\"", "\"document\": \"job\"", "$.document", "Expected 'as-built record'" },
        { "\"fingerprint\": \"sha256:", "\"fingerprint\": \"sha255:", "$.rules.fingerprint", "is no fingerprint" },
    };

    private static DateTimeOffset When { get; } = new(2031, 5, 4, 10, 0, 0, TimeSpan.FromHours(2));

    private static string Whole { get; } = new AsBuiltDocument("Invented tank", Signed()).Write();

    [Property(MaxTest = 60)]
    public Property Reading_what_was_written_gives_the_same_document() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        AsBuiltDocument document = AnyRecord.Make(seed);
        string text = document.Write();
        AsBuiltDocument read = AnyRecord.Read(text);
        Assert.Equal(document, read);
        Assert.Equal(text, read.Write());
        Assert.Equal(document.Record.ToText(), read.Record.ToText());
        Assert.Equal(document.Record.Findings, read.Record.Findings);
        Assert.Equal(document.Record.OpenFindings, read.Record.OpenFindings);
    });

    [Property(MaxTest = 40)]
    public Property Whatever_is_written_fits_the_schema() => Prop.ForAll(AnyJob.Seeds, static seed =>
    {
        string text = AnyRecord.Make(seed).Write();
        using var json = JsonDocument.Parse(text);
        Assert.True(Published.Evaluate(json.RootElement).IsValid, text);
    });

    // Cut anywhere, or with one member gone or doubled: refused with a place, or read as a record that says so.
    [Property(MaxTest = 60)]
    public Property A_change_is_told_or_is_another_record() => Prop.ForAll(
        AnyJob.Seeds, static seed => Slip.AnywhereIsToldOrAnother(AnyRecord.Make(seed).Write(), seed, AnyRecord.Read, static read => read.Write()));

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_told_at_its_place(string right, string wrong, string path, string said) =>
        Slip.IsTold(() => AsBuiltDocument.Read(Slip.In(Whole, right, wrong)), path, said);

    [Fact]
    public void Faults_of_several_lines_are_told_at_once()
    {
        string text = Whole.Replace("\"point\": \"laps\"", "\"point\": \"x\"", StringComparison.Ordinal).Replace("\"T-1\"", "\"T-9\"", StringComparison.Ordinal)
            .Replace("\"laidBy\": \"A\"", "\"laidBy\": 3", StringComparison.Ordinal);
        DocumentException refused = Assert.Throws<DocumentException>(() => AsBuiltDocument.Read(text));
        Assert.Equal(["$.lines[0].laidBy", "$.lines[0].readings[0].point"], refused.Faults.Select(static fault => fault.Path).Order(StringComparer.Ordinal).Where(static path => path.StartsWith("$.lines[0].", StringComparison.Ordinal)));
    }

    [Fact]
    public void Units_stay_as_they_were_read_off()
    {
        string text = Whole.Replace("\"96.5 um\"", "\"0.0965 mm\"", StringComparison.Ordinal).Replace("\"least\": \"7 mm\"", "\"least\": \"0.7 cm\"", StringComparison.Ordinal);
        AsBuiltDocument read = AsBuiltDocument.Read(text);
        Assert.Equal(AsBuiltDocument.Read(Whole), read);
        Assert.Equal(text, read.Write());
    }

    // The finding that was signed does not arise under rules that ask for less.
    [Fact]
    public void A_signature_does_not_pass_from_one_rule_set_to_another()
    {
        RuleSet loose = RuleSet.Default.With("loose", "1", RuleSet.Default[RuleIds.MinimumLap].WithLimit(new Measure(5, TradeUnit.Millimeter), Basis.OwnExperience("trial wraps")));
        string text = Whole.Replace(RuleSet.Default.Fingerprint.ToString(), loose.Fingerprint.ToString(), StringComparison.Ordinal)
            .Replace($"\"name\": \"{RuleSet.Default.Name}\"", "\"name\": \"loose\"", StringComparison.Ordinal);
        DocumentException refused = Assert.Throws<DocumentException>(() => AsBuiltDocument.Read(text, [loose]));
        Assert.Equal("$.signatures[0]", Assert.Single(refused.Faults).Path);
    }

    [Fact]
    public void Readings_that_other_rules_judged_are_not_written()
    {
        RuleSet strict = RuleSet.Default.With("strict", "1", RuleSet.Default[RuleIds.EightyTwentyLeast].WithLimit(new Measure(99, TradeUnit.Percent), Basis.OwnExperience("trial wraps")));
        var thickness = new AcceptanceByReadings([Length.FromMicrometers(85)], Length.FromMicrometers(100), AcceptanceRule.EightyTwenty, strict, "T-1");
        var plan = new InspectionPlan([new InspectionPlanLine("T-1", Area.FromSquareMeters(12))], RuleSet.Default);
        var record = new AsBuiltRecord(plan, [new AsBuiltLine("T-1", "A", When, [TapeBatch.Unknown], [HoldPointReading.OfThickness(thickness, "A", When)])]);
        ArgumentException refused = Assert.Throws<ArgumentException>(() => new AsBuiltDocument("x", record).Write());
        Assert.Contains("other rules", refused.Message, StringComparison.Ordinal);
    }

    private static AsBuiltRecord Signed()
    {
        var plan = new InspectionPlan([new InspectionPlanLine("T-1", Area.FromSquareMeters(12)), new InspectionPlanLine("T-2", Area.FromSquareMeters(3))], RuleSet.Default);
        var line = new AsBuiltLine(
            "T-1", "A", When, [new TapeBatch("B-1", null, null, null, null)],
            [
                HoldPointReading.OfLaps(Mm(7), null, "D", When),
                HoldPointReading.OfRollDown(true, "D", When),
                HoldPointReading.OfThickness(new AcceptanceByReadings([Length.FromMicrometers(96.5), Length.FromMicrometers(130)], Length.FromMicrometers(125), AcceptanceRule.EightyTwenty, RuleSet.Default, "T-1"), "D", When),
            ]);
        var record = new AsBuiltRecord(plan, [line]);
        return record.Sign(record.OpenFindings.First(static one => one.Rule.Id == RuleIds.MinimumLap), "C", When, "laid again");
    }
}
