using System.Text.Json;
using System.Text.RegularExpressions;
using Xunit;

namespace SacrificialTape.Docs.Tests;

/// <summary>The page of packages names what really comes with them.</summary>
public sealed partial class PackagePageTests
{
    // They work while a package is built and do not come with it.
    private static readonly string[] BuildOnly = ["Microsoft.CodeAnalysis.PublicApiAnalyzers", "Microsoft.NET.ILLink.Tasks", "Microsoft.DotNet.ILCompiler"];

    [Fact]
    public void The_table_of_dependencies_is_that_of_the_lock_files()
    {
        string[] locked = [.. Locked().Distinct().Order(StringComparer.Ordinal)];
        string[] stated = [.. Row().Matches(Repository.Read("docs/packages.md")).Select(static row => $"{row.Groups["name"].Value} {row.Groups["version"].Value}").Order(StringComparer.Ordinal)];
        Assert.NotEmpty(locked);
        Assert.Equal(locked, stated);
    }

    [Fact]
    public void Every_package_is_named()
    {
        string page = Repository.Read("docs/packages.md");
        foreach (string folder in Directory.GetDirectories(Path.Combine(Repository.Root, "src")))
        {
            Assert.Contains($"| `{Path.GetFileName(folder)}` |", page, StringComparison.Ordinal);
        }
    }

    private static IEnumerable<string> Locked() =>
        from file in Directory.GetFiles(Path.Combine(Repository.Root, "src"), "packages.lock.json", SearchOption.AllDirectories)
        from framework in JsonDocument.Parse(File.ReadAllText(file)).RootElement.GetProperty("dependencies").EnumerateObject()
        from dependency in framework.Value.EnumerateObject()
        where dependency.Value.GetProperty("type").GetString() != "Project" && !BuildOnly.Contains(dependency.Name)
        select $"{dependency.Name} {dependency.Value.GetProperty("resolved").GetString()}";

    [GeneratedRegex(@"^\| (?<name>[A-Za-z0-9.-]+) \| (?<version>[0-9.]+) \| [A-Za-z0-9.-]+ \|", RegexOptions.Multiline)]
    private static partial Regex Row();
}
