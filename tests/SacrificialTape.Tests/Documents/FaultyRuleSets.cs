using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>Every fault of a file is told, with its place and what was expected.</summary>
public sealed class FaultyRuleSets
{
    private static readonly string Whole = new RuleSetDocument(
        TeamSet.Small, RuleSet.Default, [new RuleApproval(RuleIds.MinimumLap, "A. Person", new DateOnly(2026, 5, 4))],
        [new Waiver(RuleIds.MinimumLap, "BR-101", "a short spool", "B. Person", new DateOnly(2026, 5, 5), new DateOnly(2026, 6, 5))]).Write();

    private static readonly string[] SeenBySchema =
    [
        "has a comma", "with their unit", "not null", "Expected 'note'", "is not known here", "Expected 'first principles'", "needs 'source'",
        "needs a 'note'", "Expected year-month-day", "Use a newer library", "must be a whole number", "This is a 'job'", "is empty", "is missing",
        "is no fingerprint", "Expected a list",
    ];

    public static TheoryData<string, string, string, int, string> Slips => new()
    {
        { "\"15 mm\"", "\"1,5 mm\"", "$.rules[0].limit", 14, "has a comma in the number" },
        { "\"15 mm\"", "15", "$.rules[0].limit", 14, "Write numbers as text with their unit" },
        { "\"15 mm\"", "\"15 MM\"", "$.rules[0].limit", 14, "has no unit known here: 'MM'. Case counts; units that do: um, mm, cm, m, in, ft." },
        { "\"15 mm\"", "\"15 degC\"", "$.rules[0].limit", 14, "does not measure what 'lap.minimum' limits: expected a unit such as mm, as in '10 mm'; units that do: um, mm, cm, m, in, ft." },
        { "\"15 mm\"", "\"-1 mm\"", "$.rules[0].limit", 14, "cannot be: expected at least 0 mm" },
        { "\"15 mm\"", "\"NaN mm\"", "$.rules[0].limit", 14, "does not start with a number" },
        { "\"15 mm\"", "\"1e999 mm\"", "$.rules[0].limit", 14, "does not start with a finite number" },
        { "\"15 mm\"", "null", "$.rules[0].limit", 14, "must be a text, not null" },
        { "\"id\": \"lap.minimum\"", "\"id\": \"lap.minium\"", "$.rules[0].id", 13, "Nearest is 'lap.minimum'" },
        { "\"id\": \"lap.minimum\"", "\"id\": \"crew.helmets\"", "$.rules[0].id", 13, "The library knows no rule 'crew.helmets'. For a rule of the team's own" },
        { "\"id\": \"lap.minimum\"", "\"id\": \"lap.minimum\", \"own\": true", "$.rules[0].id", 13, "is a rule of the library" },
        { "\"id\": \"lap.minimum\"", "\"id\": \"lap.minimum\", \"kind\": \"maximum\"", "$.rules[0].kind", 13, "is of kind 'minimum' in the parent set and stays so" },
        { "\"id\": \"lap.minimum\"", "\"id\": \"lap.minimum\", \"severity\": \"fatal\"", "$.rules[0].severity", 13, "Expected 'note', 'warning', 'stop'" },
        { "\"id\": \"lap.minimum\"", "\"id\": \"lap.minimum\", \"id\": \"lap.minimum\"", "$.rules[0].id", 13, "stands twice in this object" },
        { "\"id\": \"lap.minimum\"", "\"id\": \"lap.minimum\", \"limits\": \"3 mm\"", "$.rules[0].limits", 13, "is not known here. Expected approved, basis" },
        { "\"own experience\"", "\"feeling\"", "$.rules[0].basis.kind", 16, "Expected 'first principles'" },
        { "\"own experience\"", "\"published\"", "$.rules[0].basis", 15, "needs 'source'" },
        { ",\n        \"note\": \"trial wraps of May\"", string.Empty, "$.rules[0].basis", 15, "needs a 'note'" },
        { "\"2026-05-04\"", "\"4.5.2026\"", "$.rules[0].approved.on", 21, "Expected year-month-day" },
        { "\"2026-05-04\"", "\"2026-02-30\"", "$.rules[0].approved.on", 21, "is no day" },
        { "\"2026-06-05\"", "\"2026-05-04\"", "$.waivers[0].until", 32, "'until' is before 'on'" },
        { "\"rule\": \"lap.minimum\"", "\"rule\": \"lap.none\"", "$.waivers[0].rule", 27, "The set has no rule 'lap.none'" },
        { "\"schema\": 1", "\"schema\": 2", "$.schema", 3, "reads up to 1. Use a newer library" },
        { "\"schema\": 1", "\"schema\": 1.5", "$.schema", 3, "must be a whole number" },
        { "\"rule set\"", "\"job\"", "$.document", 2, "This is a 'job'" },
        { "\"version\": \"2026.2\"", "\"version\": \" \"", "$.version", 5, "'version' is empty" },
        { "\"name\": \"Estuary team\",", string.Empty, "$", 1, "'name' is missing" },
        { "sha256:", "sha256:0", "$.basedOn.fingerprint", 9, "is no fingerprint" },
        { "\"rules\": [", "\"rules\": 3, \"x\": [", "$.rules", 11, "Expected a list, not a number" },
    };

    /// <summary>Slips that a schema can see too: a wrong kind of value, an unknown word or member, something missing.</summary>
    public static TheoryData<string> Structural => [.. Slips
        .Where(static row => Array.Exists(SeenBySchema, said => row.Data.Item5.Contains(said, StringComparison.Ordinal)))
        .Select(static row => With(row.Data.Item1, row.Data.Item2))];

    [Fact]
    public void Most_slips_can_be_seen_by_a_schema() => Assert.InRange(Structural.Count, 14, Slips.Count - 1);

    [Theory]
    [MemberData(nameof(Slips))]
    public void A_slip_is_told_with_its_place(string was, string slip, string path, int line, string said)
    {
        DocumentException thrown = Assert.Throws<DocumentException>(() => RuleSetDocument.Read(With(was, slip)));
        Assert.Contains(thrown.Faults, fault => fault.Path == path && fault.Line == line && fault.Message.Contains(said, StringComparison.Ordinal));
        Assert.All(thrown.Faults, fault => Assert.Contains(fault.ToString(), thrown.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_moved_parent_is_told()
    {
        string moved = Whole.Replace(RuleSet.Default.Fingerprint.ToString(), "sha256:" + new string('0', 64), StringComparison.Ordinal);
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.Read(moved)).Faults);
        Assert.Equal(("$.basedOn.fingerprint", 9), (fault.Path, fault.Line));
        Assert.Contains(RuleSet.Default.Fingerprint.ToString(), fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void All_faults_are_told_at_once_in_the_order_of_their_places()
    {
        string faulty = Whole.Replace("\"15 mm\"", "\"1,5 mm\"", StringComparison.Ordinal)
            .Replace("\"B. Person\"", "7", StringComparison.Ordinal).Replace("\"2026-05-04\"", "\"soon\"", StringComparison.Ordinal);
        ValueList<DocumentFault> faults = Assert.Throws<DocumentException>(() => RuleSetDocument.Read(faulty)).Faults;
        Assert.Equal(["$.rules[0].limit", "$.rules[0].approved.on", "$.waivers[0].by"], faults.Select(static fault => fault.Path));
        Assert.Equal([(14, 16), (21, 15), (30, 13)], faults.Select(static fault => (fault.Line, fault.Column)));
    }

    // The second is held against nothing: a limit in degrees is no second fault.
    [Fact]
    public void A_rule_that_stands_twice_is_one_fault()
    {
        string text = With("\"rules\": [", "\"rules\": [ { \"id\": \"lap.minimum\", \"limit\": \"12 mm\", \"basis\": { \"kind\": \"common practice\" } },").Replace("\"15 mm\"", "\"15 degC\"", StringComparison.Ordinal);
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.Read(text)).Faults);
        Assert.Equal(("$.rules[1].id", "Rule 'lap.minimum' stands twice in the document."), (fault.Path, fault.Message));
    }

    [Fact]
    public void Name_and_version_of_the_parent_are_its_own()
    {
        string text = With("\"Estuary team\"", $"\"{RuleSet.Default.Name}\"").Replace("\"2026.2\"", "\"1\"", StringComparison.Ordinal);
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.Read(text)).Faults);
        Assert.Equal("$.version", fault.Path);
        Assert.Contains("but other rules. Give it a name or a version of its own", fault.Message, StringComparison.Ordinal);
        RuleSet confused = TeamSet.Small.With(RuleSet.Default.Name, RuleSet.Default.Version, TeamSet.Small[RuleIds.MinimumLap]);
        Assert.Contains("name and version of its parent", Assert.Throws<ArgumentException>(() => new RuleSetDocument(confused, RuleSet.Default)).Message, StringComparison.Ordinal);
        // The very same rules, for instance with waivers beside them, are the parent.
        Assert.Equal(RuleSet.Default, RuleSetDocument.Read(new RuleSetDocument(RuleSet.Default, RuleSet.Default).Write()).Rules);
    }

    [Fact]
    public void A_limit_without_basis_is_refused()
    {
        string text = $$$"""{"document":"rule set","schema":1,"name":"n","version":"v","basedOn":{"name":"{{{RuleSet.Default.Name}}}","version":"1","fingerprint":"{{{RuleSet.Default.Fingerprint}}}"},"rules":[{"id":"lap.minimum","limit":"15 mm"}]}""";
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.Read(text)).Faults);
        Assert.Contains("'basis' is missing: say on what the limit or severity of 'lap.minimum' rests", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Limits_that_contradict_each_other_are_refused_at_the_one_that_was_stated()
    {
        string text = $$$"""
            {"document":"rule set","schema":1,"name":"n","version":"v","basedOn":{"name":"{{{RuleSet.Default.Name}}}","version":"1","fingerprint":"{{{RuleSet.Default.Fingerprint}}}"},"rules":[
            {"id":"service.wet-temperature.warning","limit":"70 degC","basis":{"kind":"judgement","note":"a slip"}}]}
            """;
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.Read(text)).Faults);
        Assert.Equal(("$.rules[0]", 2, 1), (fault.Path, fault.Line, fault.Column));
        Assert.Contains("is above 'service.wet-temperature.stop' (60 degC)", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_set_without_parent_must_state_every_rule_of_the_library()
    {
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(
            static () => RuleSetDocument.Read("""{"document":"rule set","schema":1,"name":"n","version":"v","rules":[]}""")).Faults);
        Assert.Contains($"and {RuleSet.Default.Rules.Count - 5} more", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "$")]
    [InlineData("nonsense", "$")]
    [InlineData("[]", "$")]
    [InlineData("{\"document\": \"rule set\" // why\n}", "$.document")]
    [InlineData("{\"document\": \"rule set\",}", "$.document")]
    [InlineData("{\"document\": \"rule set\"} {}", "$")]
    [InlineData("{\"document\": \"\\uD800\"}", "$.document")]
    public void What_is_no_JSON_is_told_with_its_place(string text, string path)
    {
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.Read(text)).Faults);
        Assert.Equal((path, 1), (fault.Path, fault.Line));
        Assert.InRange(fault.Column, 1, text.Length + 1);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_told()
    {
        byte[] bytes = [.. "{\"document\": \""u8, 0xFF, 0xFE, .. "\"}"u8];
        Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.ReadUtf8(bytes)).Faults);
    }

    [Fact]
    public void Size_depth_and_number_of_faults_are_limited()
    {
        string deep = string.Concat(Enumerable.Repeat("[", 100_000));
        Assert.Contains("Nested deeper than 16 levels", Assert.Throws<DocumentException>(() => RuleSetDocument.Read(deep)).Message, StringComparison.Ordinal);
        string many = $$"""{"document":"rule set","schema":1,"name":"n","version":"v","rules":[{{string.Join(',', Enumerable.Repeat("7", 100_000))}}]}""";
        Assert.Equal(101, Assert.Throws<DocumentException>(() => RuleSetDocument.Read(many)).Faults.Count);
        var small = new DocumentLimits(100, 16, 100);
        Assert.Contains("at most 100 are read", Assert.Throws<DocumentException>(() => RuleSetDocument.Read(Whole, limits: small)).Message, StringComparison.Ordinal);
    }

    /// <summary>Whatever happens to a file, it is refused with a place, or it means the same, or its fingerprint differs.</summary>
    [Property(MaxTest = 400)]
    public Property A_change_of_a_valid_file_is_never_lost() => Prop.ForAll(
        Arb.From(from at in Gen.Choose(0, Whole.Length - 1)
                 from cut in Gen.Choose(0, 3)
                 from put in Gen.ArrayOf(Gen.Elements("{}[]\":,.0123456789 -eEmnulltrap\n\\\u03BC".ToCharArray()), 2)
                 select string.Concat(Whole.AsSpan(0, at), put, Whole.AsSpan(Math.Min(at + cut, Whole.Length)))),
        static changed =>
        {
            RuleSetDocument original = RuleSetDocument.Read(Whole);
            try
            {
                RuleSetDocument read = RuleSetDocument.Read(changed);
                Assert.Equal(original.Rules == read.Rules || original.Rules.Equals(read.Rules), original.Rules.Fingerprint == read.Rules.Fingerprint);
            }
            catch (DocumentException e)
            {
                Assert.NotEmpty(e.Faults);
                Assert.All(e.Faults, fault =>
                {
                    Assert.StartsWith("$", fault.Path, StringComparison.Ordinal);
                    Assert.InRange(fault.Line, 1, changed.Count(static c => c == '\n') + 1);
                    Assert.True(fault.Column >= 1);
                });
            }
        });

    private static string With(string was, string slip)
    {
        Assert.Contains(was, Whole, StringComparison.Ordinal);
        int at = Whole.IndexOf(was, StringComparison.Ordinal);
        return string.Concat(Whole.AsSpan(0, at), slip, Whole.AsSpan(at + was.Length));
    }
}
