using BenchmarkDotNet.Attributes;
using SacrificialTape.Provenance;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>A spiral through the typed API beside its own double kernel. Aim: at most 8 times or 60 ns, nothing allocated.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class LayBenchmarks
{
    // Instance fields, not constants: the compiler must not work the answer out itself.
    private readonly double diameterMm = 168.3;
    private readonly double widthMm = 100;
    private readonly double lapMm = 20;

    [Params(LapConvention.TrueLap, LapConvention.LapAlongPipe, LapConvention.LapBetweenMarks)]
    public LapConvention Convention { get; set; }

    [Benchmark(Baseline = true)]
    public double Kernel() =>
        SpiralKernel.Solve(this.diameterMm, this.widthMm, this.Convention, this.lapMm, default(NoSteps)).AdvanceMm;

    [Benchmark]
    public Length Typed()
    {
        Length lap = Length.FromMillimeters(this.lapMm);
        SpiralSetting setting = this.Convention switch
        {
            LapConvention.TrueLap => SpiralSetting.FromTrueLap(lap),
            LapConvention.LapAlongPipe => SpiralSetting.FromLapAlongPipe(lap),
            _ => SpiralSetting.FromLapBetweenMarks(lap),
        };
        return new SpiralGeometry(Length.FromMillimeters(this.diameterMm), Length.FromMillimeters(this.widthMm), setting).Advance;
    }
}
