using System.Text.RegularExpressions;
using Xunit;

namespace SacrificialTape.Docs.Tests;

public partial class LinkTests
{
    [Fact]
    public void Every_relative_link_and_image_leads_to_a_file()
    {
        var dead = new List<string>();
        int links = 0;
        foreach (string page in Repository.Pages)
        {
            string folder = Path.GetDirectoryName(Path.Combine(Repository.Root, page))!;
            foreach (Match match in Target().Matches(WithoutCode(Repository.Read(page))))
            {
                string target = match.Groups["target"].Value;
                if (target.Contains("://", StringComparison.Ordinal) || target.StartsWith('#') || target.StartsWith("xref:", StringComparison.Ordinal))
                {
                    continue;
                }

                links++;
                string path = Path.Combine(folder, target.Split('#', '?')[0]);
                if (!File.Exists(path) && !Directory.Exists(path))
                {
                    dead.Add($"{page}: {target}");
                }
            }
        }

        Assert.Empty(dead);
        Assert.True(links > 40, $"Only {links} links were found: the pattern has gone blind.");
    }

    [Fact]
    public void The_package_readme_has_no_relative_links() => Assert.DoesNotMatch(
        @"\]\((?!https?://)", WithoutCode(Repository.Read("src/SacrificialTape/README.md")));

    [Fact]
    public void Every_page_stands_in_the_table_of_contents()
    {
        string[] listed = [.. Href().Matches(Repository.Read("docs/guide/toc.yml")).Select(static match => match.Groups["page"].Value)];
        string[] pages = [.. Directory.EnumerateFiles(Repository.Docs, "*.md").Select(static path => "../" + Path.GetFileName(path))];
        Assert.Equal(pages.Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
        Assert.Contains("href: guide/", Repository.Read("docs/toc.yml"), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_image_says_in_words_what_it_shows()
    {
        foreach (string page in Repository.Pages)
        {
            Assert.DoesNotMatch(@"!\[\s*\]\(", Repository.Read(page));
        }
    }

    private static string WithoutCode(string text) => InlineCode().Replace(Fenced().Replace(text, string.Empty), string.Empty);

    [GeneratedRegex(@"\]\((?<target>[^)\s]+)\)")]
    private static partial Regex Target();

    [GeneratedRegex(@"href:\s*(?<page>\S+)")]
    private static partial Regex Href();

    [GeneratedRegex("^```.*?^```", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Fenced();

    [GeneratedRegex("`[^`\n]*`")]
    private static partial Regex InlineCode();
}
