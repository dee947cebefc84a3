using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using SacrificialTape.Tests.Documents;

namespace SacrificialTape.Tests.Rules;

/// <summary>A fingerprint follows what a set means, nothing else.</summary>
public sealed class Fingerprints
{
    [Property(MaxTest = 60)]
    public Property Fingerprints_are_equal_exactly_when_the_sets_are() => Prop.ForAll(
        Arb.From(from one in TeamSet.Sets from other in TeamSet.Sets from same in Gen.Elements(true, false) select (one, same ? Restated(one) : other)),
        static pair => Assert.Equal(pair.one.Equals(pair.Item2), pair.one.Fingerprint == pair.Item2.Fingerprint));

    [Fact]
    public void Every_part_of_a_rule_counts()
    {
        Rule rule = RuleSet.Default[RuleIds.MinimumLap];
        SourceReference source = References.All[0];
        Rule[] others =
        [
            new("lap.other", rule.Title, rule.Kind, rule.Limit, rule.Severity, rule.Basis, rule.Remedy),
            new(rule.Id, "t", rule.Kind, rule.Limit, rule.Severity, rule.Basis, rule.Remedy),
            new(rule.Id, rule.Title, RuleKind.Maximum, rule.Limit, rule.Severity, rule.Basis, rule.Remedy),
            new(rule.Id, rule.Title, rule.Kind, Measure.Parse("10.000000001 mm"), rule.Severity, rule.Basis, rule.Remedy),
            new(rule.Id, rule.Title, rule.Kind, Measure.Parse("10 um"), rule.Severity, rule.Basis, rule.Remedy),
            new(rule.Id, rule.Title, rule.Kind, rule.Limit, Severity.Stop, rule.Basis, rule.Remedy),
            new(rule.Id, rule.Title, rule.Kind, rule.Limit, rule.Severity, Basis.Judgement("j"), rule.Remedy),
            new(rule.Id, rule.Title, rule.Kind, rule.Limit, rule.Severity, Basis.CommonPractice("j"), rule.Remedy),
            new(rule.Id, rule.Title, rule.Kind, rule.Limit, rule.Severity, Basis.From(source), rule.Remedy),
            new(rule.Id, rule.Title, rule.Kind, rule.Limit, rule.Severity, Basis.From(new(source.Id, source.Document, source.Clause, "t", source.Reading)), rule.Remedy),
            new(rule.Id, rule.Title, rule.Kind, rule.Limit, rule.Severity, rule.Basis, "r"),
            rule.WithValidity(new ValidityPeriod(null, new DateOnly(2026, 1, 1))),
            rule.WithValidity(new ValidityPeriod(new DateOnly(2026, 1, 1), null)),
        ];
        IEnumerable<Fingerprint> all = others.Prepend(rule).Select(static other => new RuleSet("n", "v", [other]).Fingerprint)
            .Append(new RuleSet("n", "w", [rule]).Fingerprint).Append(new RuleSet("m", "v", [rule]).Fingerprint);
        Assert.Equal(others.Length + 3, all.Distinct().Count());
    }

    [Fact]
    public void It_is_SHA_256_of_the_canonical_text()
    {
        var set = new RuleSet("n", "v", [new Rule("a", "t", RuleKind.Minimum, Measure.Parse("2.5 cm"), Severity.Stop, Basis.Judgement("j"), "r")]);
        const string Text = "10:rule-set/1;1:n;1:v;\n1:a;1:t;7:Minimum;24:2.50000000000000E+001 mm;4:Stop;9:Judgement;1:j;0:;1:r;0:;0:;";
        string expected = "sha256:" + Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(Text)));
        Assert.Equal(expected, set.Fingerprint.ToString());
        Assert.Equal(set.Fingerprint, Fingerprint.Parse(expected));
    }

    [Theory]
    [InlineData("")]
    [InlineData("sha256:")]
    [InlineData("sha1:7857614c54803e62fd067aa1a93c8f7f470134861ca7d6135780202ddcc2b19b")]
    [InlineData("sha256:7857614C54803E62FD067AA1A93C8F7F470134861CA7D6135780202DDCC2B19B")]
    [InlineData("sha256:7857614c54803e62fd067aa1a93c8f7f470134861ca7d6135780202ddcc2b19")]
    public void What_is_no_fingerprint_is_refused(string text)
    {
        Assert.Contains("64 hexadecimal digits", Assert.Throws<FormatException>(() => Fingerprint.Parse(text)).Message, StringComparison.Ordinal);
        Assert.False(Fingerprint.TryParse(text, null, out _));
    }

    [Fact]
    public void An_estimate_carries_the_fingerprint_of_its_rules() =>
        Assert.Equal(RuleSet.Default.Fingerprint, SampleJob.Make().Estimate().RuleSetFingerprint);

    // The same set, its rules in another order and its lengths in other units.
    private static RuleSet Restated(RuleSet set) => new(set.Name, set.Version, set.Rules.Reverse().Select(static rule =>
        rule.Limit is { Unit: TradeUnit.Millimeter } limit ? rule.WithLimit(new Measure(limit.Number / 1000, TradeUnit.Meter), rule.Basis) : rule));
}
