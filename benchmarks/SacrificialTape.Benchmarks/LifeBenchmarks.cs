using BenchmarkDotNet.Attributes;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>A life through the typed API beside its own double kernel. Aim: at most 8 times or 60 ns, nothing allocated.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class LifeBenchmarks
{
    private static readonly PowerLawTerms Terms = new(0.813);

    private readonly double rate = 4.2;

    /// <summary>Within 20 years (a power) and beyond (a straight line).</summary>
    [Params(40.0, 80.0)]
    public double ZincUm { get; set; }

    [Benchmark(Baseline = true)]
    public double Kernel() => LossKernel.PowerYears(this.ZincUm, this.rate, Terms, default(NoSteps));

    [Benchmark]
    public Lifetime Typed() => PowerLawLoss.ZincMean.TimeToLoss(
        CorrosionRate.FromMicrometersPerYear(this.rate), Length.FromMicrometers(this.ZincUm));
}
