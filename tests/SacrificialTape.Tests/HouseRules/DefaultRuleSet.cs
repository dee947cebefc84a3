using System.Reflection;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>Every rule has a name in <see cref="RuleIds"/> and a basis.</summary>
public sealed class DefaultRuleSet
{
    [Fact]
    public void Names_and_rules_are_the_same_set()
    {
        string[] names =
        [
            .. typeof(RuleIds).GetFields(BindingFlags.Public | BindingFlags.Static).Select(static field => (string)field.GetRawConstantValue()!),
        ];
        Assert.True(names.Length > 20);
        Assert.Equal(names.Order(StringComparer.Ordinal), RuleSet.Default.Rules.Select(static rule => rule.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_rule_says_on_what_it_rests_and_what_to_do() => Assert.All(RuleSet.Default.Rules, static rule =>
    {
        Assert.False(string.IsNullOrWhiteSpace(rule.Basis.ToString()));
        Assert.False(string.IsNullOrWhiteSpace(rule.Remedy));
    });

    [Fact]
    public void What_was_only_recalled_says_so()
    {
        Rule[] recalled = [.. RuleSet.Default.Rules.Where(static rule => rule.Basis.Kind == BasisKind.Recalled)];
        Assert.NotEmpty(recalled);
        Assert.All(recalled, static rule => Assert.Contains("recalled, check before use", rule.Basis.ToString(), StringComparison.Ordinal));

        // No document that was only recalled may stand behind a basis that claims more.
        Assert.DoesNotContain(RuleSet.Default.Rules, static rule =>
            rule.Basis.Source is { Reading: SourceReading.Recalled } && rule.Basis.Kind != BasisKind.Recalled);
    }

    [Fact]
    public void Common_practice_says_that_it_has_no_source() => Assert.All(
        RuleSet.Default.Rules.Where(static rule => rule.Basis.Kind == BasisKind.CommonPractice),
        static rule => Assert.Contains("common practice, no source", rule.Basis.ToString(), StringComparison.Ordinal));
}
