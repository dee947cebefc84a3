using BenchmarkDotNet.Attributes;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>
/// A cut plan of pieces of fifty lengths, two to seven to a roll, that the plainest rule does not settle, so that all
/// rules are tried. Aim: 10,000 pieces in under a second, and little more than for a tenth of them.
/// </summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class CutPlanBenchmarks
{
    private CutPiece[] pieces = [];

    [Params(1_000, 10_000)]
    public int Pieces { get; set; }

    [GlobalSetup]
    public void Draw()
    {
        var draw = new Random(1);
        Length[] lengths = [.. Enumerable.Range(0, 50).Select(_ => Length.FromMillimeters(draw.Next(4000, 14_000)))];
        this.pieces = [.. Enumerable.Range(0, this.Pieces).Select(_ => new CutPiece(lengths[draw.Next(50)], 1))];
        ArgumentOutOfRangeException.ThrowIfZero(this.Plan().Gap);
    }

    [Benchmark]
    public CutPlan Plan() => CutPlan.Of(this.pieces, Length.FromMeters(30), Length.FromMeters(1));
}
