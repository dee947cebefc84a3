using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <summary>A table in a page that is made from the library's own data, between two comments that name it.</summary>
internal static class GeneratedTable
{
    private const string Switch = "SACRIFICIALTAPE_WRITE_PAGES";

    /// <summary>Writes the table when the switch is 1; compares it otherwise.</summary>
    internal static void Hold(string page, string name, IEnumerable<string> head, IEnumerable<IEnumerable<string>> rows)
    {
        string begin = $"<!-- generated: {name} -->";
        const string End = "\n<!-- end of generated -->";
        string text = Repository.Read(page);
        int from = text.IndexOf(begin, StringComparison.Ordinal);
        Assert.True(from >= 0, $"{page} has no place for the table '{name}'.");
        from += begin.Length;
        int to = text.IndexOf(End, from, StringComparison.Ordinal);
        Assert.True(to >= 0, $"{page}: the table '{name}' has no end.");

        string[] titles = [.. head];
        string table = "\n\n" + string.Join('\n', [Row(titles), Row(titles.Select(static _ => "---")), .. rows.Select(Row)]) + "\n";
        if (Environment.GetEnvironmentVariable(Switch) == "1")
        {
            File.WriteAllText(Path.Combine(Repository.Root, page), text[..from] + table + text[to..]);
            return;
        }

        Assert.True(
            text[from..to] == table,
            $"{page} is not current. Write it anew: {Switch}=1 dotnet run --project tests/SacrificialTape.Docs.Tests\nWanted:\n{table}");
    }

    private static string Row(IEnumerable<string> cells) => $"| {string.Join(" | ", cells.Select(Cell))} |";

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal).Replace("\n", " ", StringComparison.Ordinal);
}
