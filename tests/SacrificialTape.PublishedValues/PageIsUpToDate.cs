using Xunit;

namespace SacrificialTape.PublishedValues;

/// <summary>The committed page says what the checks say.</summary>
public class PageIsUpToDate
{
    private const string WriteVariable = "SACRIFICIALTAPE_WRITE_PAGES";

    [Fact]
    public void The_page_of_outside_checks_is_what_the_checks_would_write()
    {
        string path = Path.Combine(Root(), "docs", "published-checks.md");
        string text = ChecksPage.Text();
        if (Environment.GetEnvironmentVariable(WriteVariable) == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
        }

        Assert.True(File.Exists(path), $"docs/published-checks.md is missing: run the tests with {WriteVariable}=1.");

        // A working copy may have other line ends than the page was written with.
        string committed = File.ReadAllText(path).ReplaceLineEndings("\n");
        Assert.NotEmpty(committed);
        Assert.Equal(text, committed);
    }

    private static string Root()
    {
        DirectoryInfo? place = new(AppContext.BaseDirectory);
        while (place is not null && !File.Exists(Path.Combine(place.FullName, "SacrificialTape.sln")))
        {
            place = place.Parent;
        }

        return place?.FullName ?? throw new DirectoryNotFoundException("SacrificialTape.sln was not found above the tests.");
    }
}
