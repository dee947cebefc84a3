using BenchmarkDotNet.Attributes;
using SacrificialTape.Documents;
using SacrificialTape.Rules;

namespace SacrificialTape.Benchmarks;

/// <summary>A rule set of a team as a file: read, written, its fingerprint. Aim: read in under 2 ms once warm.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class RuleSetBenchmarks
{
    private readonly RuleSetDocument whole = RuleSetOnce.WholeDocument();

    private readonly byte[] wholeText = RuleSetOnce.Whole();

    private readonly byte[] difference = RuleSetOnce.Difference();

    [Benchmark(Baseline = true)]
    public RuleSet ReadWhole() => RuleSetDocument.ReadUtf8(this.wholeText).Rules;

    [Benchmark]
    public RuleSet ReadDifference() => RuleSetDocument.ReadUtf8(this.difference, [RuleSet.Default]).Rules;

    [Benchmark]
    public string Write() => this.whole.Write();
}
