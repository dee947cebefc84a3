using System.Globalization;
using System.Text.RegularExpressions;
using SacrificialTape.Documents;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <summary>The reference of job files: its tables are those of schema and reader, and its example holds every kind.</summary>
public partial class JobFormatPageTests
{
    private const string Page = "docs/job-format.md";

    private static readonly (string Sort, string Words)[] Parts =
    [
        ("stock", "an item of `stocks`"),
        ("choices", "`choices` of a lay"),
        ("stayClear", "stay clear: an item of `spots` or `bands`"),
        ("panelOpening", "panel opening"),
        ("shellOpening", "shell opening"),
    ];

    [Fact]
    public void The_example_names_the_rules_of_the_library() =>
        GeneratedFile.Hold(JobFormat.Example, Fingerprint().Replace(Repository.Read(JobFormat.Example), RuleSet.Default.Fingerprint.ToString(), 1));

    [Fact]
    public void The_example_is_read_estimated_and_comes_back()
    {
        JobDocument document = JobDocument.Read(Repository.Read(JobFormat.Example), limits: DocumentLimits.WebHost);
        Assert.Equal(document, JobDocument.Read(document.Write()));
        Assert.Equal(document.Job.Lines.Count, document.Job.Estimate().Lines.Count);
        Assert.True(document.WorkByLine().Count > document.Job.Lines.Count); // welds apart
    }

    [Fact]
    public void The_example_holds_every_kind_in_every_way()
    {
        var format = new JobFormat();
        Assert.Equal(["washer: kind, outsideDiameter, insideDiameter, count", "circular hollow section: kind, outsideDiameter, length"], format.NotShown("surface"));
        Assert.Empty(format.NotShown("lay"));
        Assert.Empty(format.NotShown("seam"));
        Assert.Empty(format.NotShown("lossLaw"));
        Assert.Empty(format.NotShown("stayClear"));
    }

    [Fact]
    public void The_page_holds_every_kind_and_unit()
    {
        var format = new JobFormat();
        foreach ((string table, string sort) in new[] { ("surfaces", "surface"), ("seams", "seam"), ("laws", "lossLaw") })
        {
            GeneratedTable.Hold(Page, table, ["Kind", "Members"], format.Rows(sort).Select(static row => new[] { $"`{row.Kind}`", row.Members }));
        }

        GeneratedTable.Hold(Page, "lays", ["Kind", "Lies on", "Members"], format.Rows("lay").Select(row => new[] { $"`{row.Kind}`", format.SurfacesOf(row.Kind), row.Members }));
        GeneratedTable.Hold(
            Page, "parts", ["Part", "Members"],
            Parts.Select(part => new[] { part.Words, string.Join("; or ", format.Rows(part.Sort).Select(static row => row.Members)) }));
        GeneratedTable.Hold(Page, "units", ["What it measures", "Symbol", "`TradeUnit`"], QuantityWords.All.Select(static one => new[]
        {
            one.What, one.Symbol.Length == 0 ? "none" : $"`{one.Symbol}`", one.Unit.ToString(),
        }));
    }

    [Fact]
    public void Every_unit_measures_one_thing() =>
        Assert.Equal(Enum.GetValues<TradeUnit>().Order(), QuantityWords.All.Select(static one => one.Unit).Order());

    // The spellings that the page names beside the symbols.
    [Theory]
    [InlineData("1 \u00B5m", TradeUnit.Micrometer)]
    [InlineData("1 \u03BCm", TradeUnit.Micrometer)]
    [InlineData("1 micron", TradeUnit.Micrometer)]
    [InlineData("1 \u00B0", TradeUnit.Degree)]
    [InlineData("1 \u00B0C", TradeUnit.DegreeCelsius)]
    [InlineData("1 m\u00B2", TradeUnit.SquareMeter)]
    [InlineData("1 cm\u00B2", TradeUnit.SquareCentimeter)]
    [InlineData("1 g/m\u00B2", TradeUnit.GramPerSquareMeter)]
    public void Other_spellings_are_read(string text, TradeUnit unit)
    {
        Assert.Equal(unit, Measure.Parse(text, CultureInfo.InvariantCulture).Unit);
        Assert.Contains($"`{text[2..]}`", Repository.Read(Page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("docs/exchange-jobs.md")]
    [InlineData("docs/share-a-rule-set.md")]
    public void A_file_that_a_page_shows_names_the_rules_of_the_library(string page) =>
        GeneratedFile.Hold(page, Fingerprint().Replace(Repository.Read(page), RuleSet.Default.Fingerprint.ToString()));

    [Fact]
    public void The_files_that_pages_show_are_read()
    {
        Assert.Single(JobDocument.Read(Shown("docs/exchange-jobs.md")).Notes);
        Assert.Single(RuleSetDocument.Read(Shown("docs/share-a-rule-set.md")).Approvals);
    }

    private static string Shown(string page) => JsonBlock().Match(Repository.Read(page)).Groups["json"].Value;

    [GeneratedRegex("""sha256:[0-9a-f]{64}""")]
    private static partial Regex Fingerprint();

    [GeneratedRegex("""```json\n(?<json>.*?)\n```""", RegexOptions.Singleline)]
    private static partial Regex JsonBlock();
}
