using System.Globalization;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Rules;
using Xunit;

namespace SacrificialTape.Docs.Tests;

public class GeneratedPageTests
{
    [Fact]
    public void The_rules_page_holds_the_default_rules() => GeneratedTable.Hold(
        "docs/rules.md",
        "rules",
        ["Rule", "What it is about", "Limit", "Severity", "Basis"],
        RuleSet.Default.Rules.Select(static rule => new[]
        {
            $"`{rule.Id}`", rule.Title, Limit(rule), rule.Severity.ToString(), rule.Basis.ToString(),
        }));

    [Fact]
    public void The_sources_page_holds_the_catalogue() => GeneratedTable.Hold(
        "docs/sources.md",
        "sources",
        ["Document", "Where in it", "What was taken", "Mark"],
        References.All.Select(static source => new[]
        {
            source.Document, source.Clause, source.Taken, Mark(source.Reading),
        }));

    [Fact]
    public void The_life_page_holds_the_categories() => GeneratedTable.Hold(
        "docs/zinc-life.md",
        "categories",
        ["Category", "Zinc, first year (um/a)", "Carbon steel, first year (um/a)", "Mark of the zinc row"],
        Enum.GetValues<CorrosivityCategory>().Select(static category => new[]
        {
            category.ToString(),
            Range(Corrosivity.RatesOf(category, Metal.Zinc)),
            Range(Corrosivity.RatesOf(category, Metal.CarbonSteel)),
            Mark(Corrosivity.BasisOf(category).Source!.Reading),
        }));

    private static string Range(RateRange rates) => rates.Lowest.MicrometersPerYear == 0
        ? string.Create(CultureInfo.InvariantCulture, $"at most {rates.Highest.MicrometersPerYear}")
        : string.Create(CultureInfo.InvariantCulture, $"{rates.Lowest.MicrometersPerYear} to {rates.Highest.MicrometersPerYear}");

    private static string Limit(Rule rule) => rule.Limit is not { } limit
        ? "-"
        : rule.Kind switch
        {
            RuleKind.Minimum => $"at least {limit}",
            RuleKind.Maximum => $"at most {limit}",
            RuleKind.Below => $"below {limit}",
            RuleKind.Allowance => $"taken as {limit}",
            _ => throw new ArgumentOutOfRangeException(nameof(rule), rule.Kind, "Say how the page prints this kind."),
        };

    private static string Mark(SourceReading reading) => reading switch
    {
        SourceReading.FirstHand => "read",
        SourceReading.SecondHand => "read as quoted elsewhere",
        SourceReading.Recalled => "**recalled, check before use**",
        _ => throw new ArgumentOutOfRangeException(nameof(reading)),
    };
}
