namespace SacrificialTape.Docs.Tests;

/// <summary>The files that the docs are made of.</summary>
internal static class Repository
{
    internal static string Root { get; } = FindRoot();

    internal static string Docs { get; } = Path.Combine(Root, "docs");

    /// <summary>Pages by their path from the root, forward slashes.</summary>
    internal static IReadOnlyList<string> Pages { get; } =
    [
        "README.md", "DEVELOPERS.md", "CHANGELOG.md", "src/SacrificialTape/README.md",
        .. Directory.EnumerateFiles(Docs, "*.md").Select(static path => "docs/" + Path.GetFileName(path)).Order(StringComparer.Ordinal),
        "docs/api/index.md",
    ];

    internal static string Read(string page) => File.ReadAllText(Path.Combine(Root, page)).ReplaceLineEndings("\n");

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "SacrificialTape.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("No folder above the tests holds SacrificialTape.sln.");
    }
}
