using BenchmarkDotNet.Attributes;
using SacrificialTape.Exposure;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>One life with everything uncertain: rate, exponent, foil and usable share. Aim: under 50 us.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class LifeSpreadBenchmarks
{
    private static readonly Foil Foil = new(Length.FromMicrometers(100), Length.FromMicrometers(10));

    private static readonly LifeUncertainty Given = new(
        UncertainRate.FromCategory(CorrosivityCategory.C3, Probability.FromFraction(0.05)),
        LossGrowth.PowerLaw(UncertainExponent.Zinc, AfterTwentyYears.Tangent),
        UncertainUtilisation.Triangular(Utilisation.FromFraction(0.6), Utilisation.FromFraction(0.8), Utilisation.FromFraction(0.95)),
        ToleranceShape.Triangular);

    private static readonly LifeDistribution Made = new(Foil, 2, Given);

    private readonly Probability sure = Probability.FromFraction(0.9);

    private readonly Lifetime wanted = Lifetime.Of(Duration.FromYears365(60));

    [Benchmark]
    public Lifetime FromInputsToLife() => new LifeDistribution(Foil, 2, Given).ReachedWith(this.sure);

    [Benchmark]
    public Lifetime LifeOnceMade() => Made.ReachedWith(this.sure);

    [Benchmark]
    public Probability ChanceOnceMade() => Made.ChanceOf(this.wanted);
}
