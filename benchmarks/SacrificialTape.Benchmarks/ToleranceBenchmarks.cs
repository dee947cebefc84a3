using BenchmarkDotNet.Attributes;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;

namespace SacrificialTape.Benchmarks;

/// <summary>One tolerance factor from few, some and very many readings. Aim: under a millisecond.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class ToleranceBenchmarks
{
    private readonly Probability coverage = Probability.FromFraction(0.9);

    private readonly Probability confidence = Probability.FromFraction(0.95);

    [Params(2, 10, 100, 10_000)]
    public int Readings { get; set; }

    [Benchmark]
    public double Factor() => new ToleranceFactor(this.Readings, this.coverage, this.confidence).Value;
}
