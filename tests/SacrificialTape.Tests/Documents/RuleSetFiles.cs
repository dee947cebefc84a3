using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using SacrificialTape.Documents;

namespace SacrificialTape.Tests.Documents;

/// <summary>A rule set comes back from its file as it went in.</summary>
public sealed class RuleSetFiles
{
    [Property(MaxTest = 60)]
    public Property Reading_what_was_written_gives_the_same_document() => Prop.ForAll(TeamSet.AnyFile, static document =>
    {
        var read = RuleSetDocument.Read(document.Write());
        Assert.Equal(document, read);
        Assert.Equal(document.Rules.Fingerprint, read.Rules.Fingerprint);
        Assert.Equal(document.Write(), read.Write());
    });

    [Fact]
    public void A_file_based_on_a_parent_states_only_what_differs()
    {
        string text = new RuleSetDocument(TeamSet.Small, RuleSet.Default).Write();
        Assert.Equal(
            $$"""
            {
              "document": "rule set",
              "schema": 1,
              "name": "Estuary team",
              "version": "2026.2",
              "basedOn": {
                "name": "SacrificialTape common practice",
                "version": "1",
                "fingerprint": "{{RuleSet.Default.Fingerprint}}"
              },
              "rules": [
                {
                  "id": "lap.minimum",
                  "limit": "15 mm",
                  "basis": {
                    "kind": "own experience",
                    "note": "trial wraps of May"
                  }
                }
              ]
            }

            """.ReplaceLineEndings("\n"), text);
    }

    [Fact]
    public void A_set_may_be_based_on_a_teams_set()
    {
        RuleSet child = TeamSet.Small.With("Pier gang", "1", TeamSet.Small[RuleIds.MinimumLap].WithSeverity(Severity.Stop, Basis.Judgement("laps opened in the swell")));
        string text = new RuleSetDocument(child, TeamSet.Small).Write();
        Assert.Equal(child, RuleSetDocument.Read(text, [TeamSet.Small]).Rules);
        DocumentFault fault = Assert.Single(Assert.Throws<DocumentException>(() => RuleSetDocument.Read(text)).Faults);
        Assert.Equal("$.basedOn", fault.Path);
        Assert.Contains("is not at hand. At hand: SacrificialTape common practice, version 1.", fault.Message, StringComparison.Ordinal);
    }

    // What is the parent's own need not be said to be own again, and a slip in its name finds it.
    [Fact]
    public void A_rule_of_a_parents_own_is_known_to_its_children()
    {
        var wind = new Rule("team.wind.maximum", "Wind while laying", RuleKind.Maximum, Measure.Parse("8 m/s"), Severity.Warning, Basis.Judgement("foil flaps"), "Wait.");
        RuleSet parent = TeamSet.Small.With("Estuary team", "3", wind);
        RuleSet child = parent.With("Pier gang", "1", wind.WithLimit(Measure.Parse("6 m/s"), Basis.OwnExperience("a long pier")));
        string text = new RuleSetDocument(child, parent).Write();
        Assert.DoesNotContain("\"own\": true", text, StringComparison.Ordinal);
        Assert.Equal(child, RuleSetDocument.Read(text, [parent]).Rules);
        Assert.Equal(child, RuleSetDocument.Read(Slip.In(text, "\"id\": \"team.wind.maximum\"", "\"id\": \"team.wind.maximum\", \"own\": true"), [parent]).Rules);
        Slip.IsTold(() => RuleSetDocument.Read(Slip.In(text, "team.wind.maximum", "team.wind.maximun"), [parent]), "$.rules[0].id", "Nearest is 'team.wind.maximum'. For a rule of the team's own");
        Slip.IsTold(() => RuleSetDocument.Read(Slip.In(text, "6 m/s", "6 knots"), [parent]), "$.rules[0].limit", "units that do: m/s.");
    }

    [Fact]
    public void Rules_that_nobody_judges_by_can_be_asked_for_without_a_job()
    {
        var wind = new Rule("team.wind", "Wind while laying", RuleKind.Statement, null, Severity.Warning, Basis.Judgement("foil flaps"), "Wait.");
        var document = new RuleSetDocument(TeamSet.Small.With("Estuary team", "3", wind));
        Assert.Equal([wind], document.UnjudgedRules());
        Assert.Empty(document.UnjudgedRules([new Wind()]));
        Assert.Empty(RuleSetDocument.Reference.UnjudgedRules([new Wind()]));
    }

    [Fact]
    public void Spelling_order_and_units_do_not_matter()
    {
        string text = new RuleSetDocument(TeamSet.Small).Write();
        string other = text.Replace("\"15 mm\"", "\"1.5 cm\"", StringComparison.Ordinal).Replace("\n", "\r\n  ", StringComparison.Ordinal)
            .Replace("lap.minimum", "lap\\u002eminimum", StringComparison.Ordinal);
        Assert.NotEqual(text, other);
        RuleSet read = RuleSetDocument.Read(other).Rules;
        Assert.Equal(TeamSet.Small, read);
        Assert.Equal(TeamSet.Small.Fingerprint, new RuleSet(read.Name, read.Version, read.Rules.Reverse()).Fingerprint);
    }

    [Fact]
    public void A_byte_order_mark_is_allowed()
    {
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(new RuleSetDocument(TeamSet.Small, RuleSet.Default).Write())];
        Assert.Equal(TeamSet.Small, RuleSetDocument.ReadUtf8(bytes).Rules);
    }

    [Fact]
    public void Half_of_a_surrogate_pair_is_refused_and_not_replaced()
    {
        RuleSet set = RuleSet.Default.With("half \uD800", "1", RuleSet.Default[RuleIds.MinimumLap]);
        Assert.Contains("surrogate", Assert.Throws<ArgumentException>(() => new RuleSetDocument(set).Write()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_set_that_cannot_be_is_no_document()
    {
        Rule wide = RuleSet.Default[RuleIds.MinimumStripWidth];
        RuleSet contradictory = RuleSet.Default.With("a", "1", wide.WithLimit(Measure.Parse("10 m"), Basis.Judgement("a slip")));
        Assert.Contains("is above", Assert.Throws<ArgumentException>(() => new RuleSetDocument(contradictory)).Message, StringComparison.Ordinal);
        var dropped = new RuleSet("a", "1", RuleSet.Default.Rules.Skip(1));
        Assert.Contains("not drop it", Assert.Throws<ArgumentException>(() => new RuleSetDocument(dropped, RuleSet.Default)).Message, StringComparison.Ordinal);
        var approval = new RuleApproval("team.none", "A", new DateOnly(2026, 1, 1));
        Assert.Contains("not in the set", Assert.Throws<ArgumentException>(() => new RuleSetDocument(RuleSet.Default, approvals: [approval])).Message, StringComparison.Ordinal);
        var lap = new RuleApproval(RuleIds.MinimumLap, "A", new DateOnly(2026, 1, 1));
        Assert.Contains("approved twice", Assert.Throws<ArgumentException>(() => new RuleSetDocument(RuleSet.Default, approvals: [lap, lap])).Message, StringComparison.Ordinal);
        var waiver = new Waiver("team.none", "BR-1", "r", "p", new DateOnly(2026, 1, 1));
        Assert.Contains("which is not in the set", Assert.Throws<ArgumentException>(() => new RuleSetDocument(RuleSet.Default, waivers: [waiver])).Message, StringComparison.Ordinal);
    }

    private sealed record Wind : IOwnRule
    {
        public string RuleId => "team.wind";

        public IEnumerable<Finding> Judge(Rule rule, SurveyLine line, LifeEstimate life) => [];
    }
}
