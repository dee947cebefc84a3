using FsCheck.Xunit;

namespace SacrificialTape.Tests.Rules;

public sealed class Waivers
{
    private static readonly DateOnly Day = new(2026, 6, 1);

    [Fact]
    public void A_waiver_covers_its_rule_at_its_place_on_its_days()
    {
        var waiver = new Waiver(RuleIds.MinimumLap, "BR-101", "a short spool", "B. Person", Day, Day.AddDays(10));
        Finding finding = RuleSet.Default[RuleIds.MinimumLap].Judge(Measure.Parse("5 mm"), "BR-101")!;
        Assert.True(waiver.Covers(finding, Day));
        Assert.True(waiver.Covers(finding, Day.AddDays(10)));
        Assert.False(waiver.Covers(finding, Day.AddDays(-1)));
        Assert.False(waiver.Covers(finding, Day.AddDays(11)));
        Assert.False(waiver.Covers(RuleSet.Default[RuleIds.MinimumLap].Judge(Measure.Parse("5 mm"), "BR-102")!, Day));
        Assert.False(waiver.Covers(RuleSet.Default[RuleIds.OldPaint].State("BR-101"), Day));
        Assert.Equal("[lap.minimum] BR-101: waived by B. Person on 2026-06-01, until 2026-06-11: a short spool", waiver.ToString());
    }

    [Property]
    public void No_finding_and_no_waiver_is_lost(bool[] waived, bool[] idle)
    {
        string[] ids = [RuleIds.OldPaint, RuleIds.Aluminium, RuleIds.FacingFilm];
        Finding[] findings = [.. waived.Select((_, i) => RuleSet.Default[ids[i % 3]].State($"line {i}"))];
        Waiver[] waivers =
        [
            .. waived.Index().Where(static item => item.Item).Select(item => new Waiver(ids[item.Index % 3], $"line {item.Index}", "r", "p", Day)),
            .. idle.Select(static (_, i) => new Waiver(RuleIds.OldPaint, $"elsewhere {i}", "r", "p", Day)),
        ];
        var sorted = FindingsUnderWaivers.Of(findings, waivers, Day);
        Assert.Equal(findings.Where((_, i) => !waived[i]), sorted.Open);
        Assert.Equal(findings.Where((_, i) => waived[i]), sorted.Waived.Select(static item => item.Finding));
        Assert.Equal(idle.Length, sorted.Unused.Count);
        Assert.Equal(idle.Length, sorted.Judge(RuleSet.Default).Count(static finding => finding.Rule.Id == RuleIds.WaiverUnused));
    }

    [Fact]
    public void A_finding_that_is_waived_says_so()
    {
        Finding finding = RuleSet.Default[RuleIds.OldPaint].State("TK-1");
        var sorted = FindingsUnderWaivers.Of([finding], [new Waiver(RuleIds.OldPaint, "TK-1", "tested, no lead", "C. Person", Day)], Day);
        Assert.Equal($"{finding} Waived by C. Person on 2026-06-01: tested, no lead", Assert.Single(sorted.Waived).ToString());
        Assert.Equal("0 open, 1 waived, 0 waiver(s) unused", sorted.ToString());
    }

    [Fact]
    public void A_waiver_that_ends_before_it_begins_or_says_nothing_is_refused()
    {
        Assert.Contains("2026-05-31, is before", Assert.Throws<ArgumentException>(static () => new Waiver("a", "b", "c", "d", Day, Day.AddDays(-1))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(static () => new Waiver("a", "b", " ", "d", Day));
    }
}
