using System.Text.RegularExpressions;

namespace SacrificialTape.Tests.HouseRules;

/// <summary>One public type a file, named after it.</summary>
public sealed partial class Files
{
    [Fact]
    public void Each_file_declares_one_type_and_bears_its_name()
    {
        FileInfo[] files =
        [
            .. new DirectoryInfo(Path.Combine(Library.RepositoryRoot.FullName, "src")).EnumerateFiles("*.cs", SearchOption.AllDirectories)
                .Where(static file => !file.FullName.Split(Path.DirectorySeparatorChar).Intersect(["obj", "bin"]).Any()),
        ];
        Assert.True(files.Length > 80, $"Only {files.Length} files were found.");
        Assert.Empty(files.SelectMany(static file => Faults(file.Name, File.ReadAllText(file.FullName))));
    }

    [Theory]
    [InlineData("One.cs", "public sealed class One\n{\n}\n\npublic enum Two\n{\n}\n", "One.cs declares One, Two")]
    [InlineData("One.cs", "public readonly record struct Other\n{\n}\n", "One.cs declares Other")]
    [InlineData("One.cs", "public delegate void Other(int given);\n", "One.cs declares Other")]
    [InlineData("LapUtils.cs", "internal static class LapUtils\n{\n}\n", "LapUtils.cs is named for nothing")]
    [InlineData("TapeHelpers.cs", "internal static class TapeHelpers\n{\n}\n", "TapeHelpers.cs is named for nothing")]
    public void The_check_sees(string name, string text, string fault) => Assert.Contains(fault, Faults(name, text));

    [Fact]
    public void The_check_lets_a_theme_follow_the_name() =>
        Assert.Empty(Faults("One.Theme.cs", "public sealed partial class One<T>\n{\n    private sealed class Inner\n    {\n    }\n}\n"));

    private static IEnumerable<string> Faults(string name, string text)
    {
        if (NamedForNothing().IsMatch(name))
        {
            yield return name + " is named for nothing";
        }

        // Types that stand at the left margin are those of the namespace.
        string[] types = [.. Declaration().Matches(text).Select(static match => match.Groups["name"].Value)];
        if (types.Length != 1 || types[0] != name.Split('.')[0])
        {
            yield return $"{name} declares {string.Join(", ", types)}";
        }
    }

    [GeneratedRegex(@"^(?:(?:public|internal|sealed|static|abstract|readonly|partial|file|ref) )*(?:class|record struct|record|struct|interface|enum|delegate \w+) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex Declaration();

    [GeneratedRegex("Util(s|ity|ities)?\\b|Helpers?\\b", RegexOptions.IgnoreCase)]
    private static partial Regex NamedForNothing();
}
