using BenchmarkDotNet.Attributes;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.Sweeps.Batch;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>Lives of zinc from the air of as many sites as there are rows: by columns, by a loop over the scalar kernels, and by the typed form.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class SweepBenchmarks
{
    private const int Rows = 4096;

    private static readonly PowerLawTerms Terms = new(0.813);

    private readonly double[] celsius = Spread(1, -10, 25);
    private readonly double[] percent = Spread(2, 40, 90);
    private readonly double[] sulfur = Spread(3, 1, 120);
    private readonly double[] chloride = Spread(4, 1, 700);
    private readonly double[] zinc = Spread(5, 20, 200);
    private readonly double[] rate = new double[Rows];
    private readonly double[] life = new double[Rows];

    [Benchmark(Baseline = true)]
    public void Columns()
    {
        FirstYearRateRows.Zinc(this.celsius, this.percent, this.sulfur, this.chloride, this.rate);
        LifeRows.PowerLaw(this.zinc, this.rate, 0.813, this.life);
    }

    [Benchmark]
    public void ScalarKernels()
    {
        for (int i = 0; i < Rows; i++)
        {
            this.rate[i] = ExposureKernel.Zinc(this.celsius[i], this.percent[i], this.sulfur[i], this.chloride[i], default(NoSteps)).Rate;
            this.life[i] = LossKernel.PowerYears(this.zinc[i], this.rate[i], Terms, default(NoSteps));
        }
    }

    [Benchmark]
    public void Typed()
    {
        for (int i = 0; i < Rows; i++)
        {
            var air = new AnnualAtmosphere(
                Temperature.FromDegreesCelsius(this.celsius[i]),
                RelativeHumidity.FromPercent(this.percent[i]),
                DepositionRate.FromMilligramsPerSquareMeterDay(this.sulfur[i]),
                DepositionRate.FromMilligramsPerSquareMeterDay(this.chloride[i]));
            CorrosionRate first = new DoseResponse(Metal.Zinc, air).Rate;
            this.life[i] = PowerLawLoss.ZincMean.TimeToLoss(first, Length.FromMicrometers(this.zinc[i])).Years;
        }
    }

    // Numbers without a pattern that a branch could learn.
    private static double[] Spread(int which, double low, double high) =>
        [.. Enumerable.Range(1, Rows).Select(i => low + ((high - low) * (((i + (which * 17)) * 0.6180339887498949) % 1)))];
}
