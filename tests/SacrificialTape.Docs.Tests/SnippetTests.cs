using System.Reflection;
using SacrificialTape.Snippets;
using Xunit;

namespace SacrificialTape.Docs.Tests;

public class SnippetTests
{
    public static TheoryData<string, string, string> Quoted()
    {
        var data = new TheoryData<string, string, string>();
        foreach (Snippet snippet in All())
        {
            data.Add(snippet.Page, snippet.Source, snippet.Region);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Quoted))]
    public void A_page_prints_what_its_code_writes(string page, string source, string region)
    {
        Snippet snippet = All().Single(one => one.Page == page && one.Source == source && one.Region == region);
        Assert.Equal(snippet.Run(), snippet.Printed);
    }

    [Fact]
    public void Every_quote_has_its_output_under_it()
    {
        foreach (string page in Repository.Pages)
        {
            Assert.True(
                Snippet.CountQuotes(page) == Snippet.Of(page).Count(),
                $"{page} quotes code without a text block of its output.");
        }
    }

    [Fact]
    public void Every_snippet_is_quoted()
    {
        string[] quoted = [.. All().Select(static snippet => snippet.Source + "#" + snippet.Region.Replace("-", string.Empty, StringComparison.Ordinal))];
        foreach (Type type in typeof(SpiralLayPage).Assembly.GetExportedTypes())
        {
            foreach (MethodInfo method in type.GetMethods(BindingFlags.Public | BindingFlags.Static))
            {
                Assert.Contains($"examples/Snippets/{type.Name}.cs#{method.Name}", quoted, StringComparer.OrdinalIgnoreCase);
            }
        }
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("src/SacrificialTape/README.md")]
    public void A_readme_shows_the_first_answer_and_what_it_writes(string page)
    {
        string program = File.ReadAllText(Path.Combine(Repository.Docs, "examples/FirstAnswer/Program.cs")).ReplaceLineEndings("\n");
        string text = Repository.Read(page);
        Assert.Contains($"```csharp\n{program}```", text, StringComparison.Ordinal);
        Assert.Contains($"```text\n{Snippet.Captured(Snippet.RunFirstAnswer)}\n```", text, StringComparison.Ordinal);
    }

    private static IEnumerable<Snippet> All() => Repository.Pages.SelectMany(Snippet.Of);
}
