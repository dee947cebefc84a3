using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using SacrificialTape.Snippets;

namespace SacrificialTape.Docs.Tests;

/// <summary>A piece of code that a page quotes, with the output that the page prints under it.</summary>
internal sealed partial record Snippet(string Page, string Source, string Region, string Printed)
{
    internal static IEnumerable<Snippet> Of(string page) => Quote().Matches(Repository.Read(page)).Select(match => new Snippet(
        page, match.Groups["source"].Value, match.Groups["region"].Value, match.Groups["printed"].Value));

    /// <summary>How many quotes a page holds, with or without output under them; those of the example host are held by its own page's tests.</summary>
    internal static int CountQuotes(string page) => Repository.Read(page).Split("[!code-csharp").Skip(1)
        .Count(static quote => !quote.StartsWith("[](examples/HostTool/", StringComparison.Ordinal));

    /// <summary>Runs the code and gives what it writes.</summary>
    internal string Run() => Captured(this.Region.Length == 0 ? RunFirstAnswer : this.RunRegion);

    // There is one console, and tests may run side by side.
    private static readonly Lock OneConsole = new();

    internal static string Captured(Action action)
    {
        using Lock.Scope mine = OneConsole.EnterScope();
        TextWriter console = Console.Out;
        CultureInfo culture = CultureInfo.CurrentCulture;
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
            Console.SetOut(output);
            action();
        }
        finally
        {
            Console.SetOut(console);
            CultureInfo.CurrentCulture = culture;
        }

        return output.ToString().ReplaceLineEndings("\n").TrimEnd('\n');
    }

    internal static void RunFirstAnswer()
    {
        MethodInfo main = Assembly.Load("SacrificialTape.FirstAnswer").EntryPoint!;
        main.Invoke(null, BindingFlags.DoNotWrapExceptions, null, [Array.Empty<string>()], CultureInfo.InvariantCulture);
    }

    // The region three-statements of SpiralLayPage.cs is the body of SpiralLayPage.ThreeStatements.
    private void RunRegion()
    {
        string text = File.ReadAllText(Path.Combine(Repository.Docs, this.Source));
        Xunit.Assert.Contains($"#region {this.Region}\n", text.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        string className = Path.GetFileNameWithoutExtension(this.Source);
        string methodName = string.Concat(this.Region.Split('-').Select(static word => char.ToUpperInvariant(word[0]) + word[1..]));
        MethodInfo method = typeof(SpiralLayPage).Assembly.GetType($"SacrificialTape.Snippets.{className}")?.GetMethod(methodName)
            ?? throw new InvalidOperationException($"{className} has no method {methodName} for the region {this.Region}.");
        method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, null, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(
        """\[!code-csharp\[\]\((?!examples/HostTool/)(?<source>[^)#]+)(?:#(?<region>[a-z0-9-]+))?\)\]\n(?:(?!\[!code-|```)[^\n]*\n)*?```text\n(?<printed>.*?)\n```""",
        RegexOptions.Singleline)]
    private static partial Regex Quote();
}
