using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using System.Text;
using SacrificialTape.Documents;
using SacrificialTape.Rules;

namespace SacrificialTape.Benchmarks;

/// <summary>A rule set read as the first call of a process, and again once warm.</summary>
internal static class RuleSetOnce
{
    private const int WarmRounds = 200;

    internal static int Run(string file)
    {
        byte[] text = File.ReadAllBytes(file);
        long methods = JitInfo.GetCompiledMethodCount();
        TimeSpan compiling = JitInfo.GetCompilationTime();
        var clock = Stopwatch.StartNew();
        RuleSet rules = RuleSetDocument.ReadUtf8(text, Parents(text)).Rules;
        double first = clock.Elapsed.TotalMilliseconds;
        methods = JitInfo.GetCompiledMethodCount() - methods;
        compiling = JitInfo.GetCompilationTime() - compiling;
        for (int round = 0; round < WarmRounds; round++)
        {
            _ = RuleSetDocument.ReadUtf8(text, Parents(text));
        }

        clock.Restart();
        for (int round = 0; round < WarmRounds; round++)
        {
            _ = RuleSetDocument.ReadUtf8(text, Parents(text));
        }

        double warm = clock.Elapsed.TotalMilliseconds / WarmRounds;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{rules}: {text.Length} bytes, {first:0.0} ms as the first call of the process ({methods} methods compiled in {compiling.TotalMilliseconds:0.0} ms), {warm:0.00} ms warm"));
        return 0;
    }

    /// <summary>Writes the two files to time: every rule with the reference cases, and a set that states what differs.</summary>
    internal static int WriteFiles(string folder)
    {
        File.WriteAllBytes(Path.Combine(folder, "whole.json"), Whole());
        File.WriteAllBytes(Path.Combine(folder, "difference.json"), Difference());
        return 0;
    }

    internal static RuleSetDocument WholeDocument() => new(RuleSet.Default, cases: ReferenceCases.All());

    internal static byte[] Whole() => Encoding.UTF8.GetBytes(WholeDocument().Write());

    internal static byte[] Difference() => Encoding.UTF8.GetBytes($$"""
        {
          "document": "rule set", "schema": 1, "name": "Invented team", "version": "3",
          "basedOn": { "name": "{{RuleSet.Default.Name}}", "version": "{{RuleSet.Default.Version}}", "fingerprint": "{{RuleSet.Default.Fingerprint}}" },
          "rules": [
            { "id": "lap.minimum", "limit": "15 mm", "basis": { "kind": "own experience", "note": "invented" } },
            { "id": "site.humidity.maximum", "limit": "80 %", "basis": { "kind": "judgement", "note": "invented" } }
          ]
        }
        """);

    // A set that states every rule needs none: the library's own is not made then.
    private static RuleSet[]? Parents(byte[] text) => text.AsSpan().IndexOf("\"basedOn\""u8) >= 0 ? [RuleSet.Default] : null;
}
