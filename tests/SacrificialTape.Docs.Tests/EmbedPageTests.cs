using System.Globalization;
using System.Text.RegularExpressions;
using HostTool;
using SacrificialTape.Documents;
using SacrificialTape.Rules;
using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <summary>The page on embedding: its quotes are code that is there, and its output is what the example host writes.</summary>
public partial class EmbedPageTests
{
    private const string Page = "docs/embed.md";
    private const string RulesFile = "docs/examples/HostTool/site/rules.json";

    [Fact]
    public void The_page_prints_what_the_host_writes()
    {
        Match[] runs = Run().Matches(Repository.Read(Page)).ToArray();
        Assert.Equal(["", "--verify", "--workings LC-01"], runs.Select(static run => run.Groups["arguments"].Value));
        Assert.All(runs, static run => Assert.Equal(Written(run.Groups["arguments"].Value), run.Groups["printed"].Value));
    }

    [Fact]
    public void Every_region_of_the_host_is_quoted_and_every_quote_is_there()
    {
        string folder = Path.Combine(Repository.Docs, "examples/HostTool");
        IEnumerable<string> regions =
            from file in Directory.EnumerateFiles(folder, "*.cs")
            from Match region in Region().Matches(File.ReadAllText(file))
            select $"examples/HostTool/{Path.GetFileName(file)}#{region.Groups["name"].Value}";
        string[] quoted = [.. Quote().Matches(Repository.Read(Page)).Select(static quote => quote.Groups["source"].Value)];
        Assert.True(quoted.Length > 8, $"Only {quoted.Length} quotes were found.");
        Assert.Equal(regions.Order(StringComparer.Ordinal), quoted.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_rules_of_the_host_are_based_on_the_rules_of_the_library() =>
        GeneratedFile.Hold(RulesFile, Fingerprint().Replace(Repository.Read(RulesFile), RuleSet.Default.Fingerprint.ToString(), 1));

    [Fact]
    public void The_page_shows_the_rules_that_the_host_reads()
    {
        // The fingerprint on the page is left out; all else is the file.
        string file = Fingerprint().Replace(Repository.Read(RulesFile), "sha256:...");
        Match shown = JsonBlock().Match(Repository.Read(Page));
        Assert.Contains(shown.Groups["json"].Value, file, StringComparison.Ordinal);
        Assert.True(RuleSetDocument.Read(Repository.Read(RulesFile)).Rules.TryGet("lighting.reach.maximum", out _));
    }

    [Fact]
    public void The_page_on_checking_shows_Markdown_as_text_and_rendered()
    {
        string markdown = Snippet.Captured(Snippets.CheckOurNumbersPage.AsMarkdown);
        Assert.Equal(2, Repository.Read("docs/check-our-numbers.md").Split(markdown).Length - 1);
    }

    private static string Written(string arguments)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var errors = new StringWriter(CultureInfo.InvariantCulture);
        string[] given = arguments.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(0, HostProgram.Run(given, Path.Combine(Repository.Root, RulesFile), output, errors));
        Assert.Empty(errors.ToString());
        return output.ToString().ReplaceLineEndings("\n").TrimEnd('\n');
    }

    [GeneratedRegex("""```console\ndotnet run --project docs/examples/HostTool(?: -- (?<arguments>[^\n]*))?\n```\n\n```text\n(?<printed>.*?)\n```""", RegexOptions.Singleline)]
    private static partial Regex Run();

    [GeneratedRegex("""#region (?<name>[a-z-]+)""")]
    private static partial Regex Region();

    [GeneratedRegex("""\[!code-csharp\[\]\((?<source>examples/HostTool/[^)]+)\)\]""")]
    private static partial Regex Quote();

    [GeneratedRegex("""sha256:[0-9a-f]{64}""")]
    private static partial Regex Fingerprint();

    [GeneratedRegex("""```json\n(?<json>.*?)\n```""", RegexOptions.Singleline)]
    private static partial Regex JsonBlock();
}
