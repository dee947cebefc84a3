using System.Globalization;
using SacrificialTape.Documents;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
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
    public void The_rules_page_names_the_fingerprint() => GeneratedTable.Hold(
        "docs/rules.md",
        "fingerprint",
        ["Name", "Version", "Fingerprint"],
        [[RuleSet.Default.Name, RuleSet.Default.Version, $"`{RuleSet.Default.Fingerprint}`"]]);

    [Fact]
    public void The_page_on_checking_holds_every_calculation() => GeneratedTable.Hold(
        "docs/check-our-numbers.md",
        "calculations",
        ["Calculation", "What it works out", "Inputs", "Result"],
        CaseCalculations.All.Select(static one => new[]
        {
            $"`{one.Id}`", one.Title, string.Join(", ", one.Inputs.Select(static input => $"`{input.Name}`{Unit(input.Unit)}")), Unit(one.Result) is { Length: > 0 } unit ? unit.Trim(' ', '(', ')') : "number",
        }));

    [Fact]
    public void The_limits_page_holds_every_limit_that_hurts() => GeneratedTable.Hold(
        "docs/limits.md",
        "limits",
        ["Rule", "What it is about", "Limit", "Severity", "What to do", "Basis", "Mark"],
        RuleSet.Default.Rules.Where(static rule => Hurts(rule.Id)).Select(static rule => new[]
        {
            $"`{rule.Id}`", rule.Title, Limit(rule), rule.Severity.ToString(), rule.Remedy, rule.Basis.ToString(), MarkOf(rule.Basis),
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

    [Fact]
    public void The_reference_rule_set_is_the_one_of_the_code() =>
        GeneratedFile.Hold("docs/rule-sets/common-practice-1.json", RuleSetDocument.Reference.Write());

    // As a symbol in brackets; nothing for a plain number.
    private static string Unit(TradeUnit unit) => new Measure(1, unit).ToString()[1..].Trim() is { Length: > 0 } symbol ? $" ({symbol})" : string.Empty;

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

    // Whole groups, so that a rule added to one of them cannot be missing on the page.
    private static bool Hurts(string id) => id.Split('.')[0] is "hazard" or "service" or "substrate" or "galvanic" or "paint"
        || id is RuleIds.AdhesiveServiceTemperature or RuleIds.FacingFilm or RuleIds.FacingFilmUnderLay or RuleIds.PotentialTooLow
            or RuleIds.LifeWithoutBareSteel or RuleIds.DuplexFactorOfHotDip or RuleIds.NoPublishedLife
            or RuleIds.ImmersedZinc or RuleIds.BuriedMetal or RuleIds.IsolatingJointBridged or RuleIds.SteelLeftClear;

    private static string MarkOf(Basis basis) => basis.Kind switch
    {
        BasisKind.FirstPrinciples => "worked out",
        BasisKind.CommonPractice => "common practice",
        BasisKind.Judgement => "judgement",
        BasisKind.OwnExperience => "own experience",
        _ => Mark(basis.Source!.Reading),
    };

    private static string Mark(SourceReading reading) => reading switch
    {
        SourceReading.FirstHand => "read",
        SourceReading.SecondHand => "read as quoted elsewhere",
        SourceReading.Recalled => "**recalled, check before use**",
        _ => throw new ArgumentOutOfRangeException(nameof(reading)),
    };
}
