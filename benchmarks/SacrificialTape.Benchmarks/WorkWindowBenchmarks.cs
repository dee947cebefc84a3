using BenchmarkDotNet.Attributes;
using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace SacrificialTape.Benchmarks;

/// <summary>Windows of work from an invented year of 8760 hours, most of them outside and so with reasons.</summary>
[MemoryDiagnoser]
[HideColumns("Job", "Error", "RatioSD", "Median")]
public class WorkWindowBenchmarks
{
    private SiteLog log = new([new SiteHour(DateTimeOffset.UnixEpoch, null, null, null)]);

    [GlobalSetup]
    public void Draw()
    {
        var begin = new DateTimeOffset(2025, 1, 1, 0, 0, 0, TimeSpan.Zero);
        var draw = new Random(1);
        this.log = new SiteLog(Enumerable.Range(0, 8760).Select(hour =>
        {
            double day = Math.Sin((hour - 9) * Math.PI / 12);
            double celsius = 10 - (10 * Math.Cos(hour * Math.PI / 4380)) + (5 * day);
            double humidity = Math.Clamp(75 - (15 * day) + (20 * (draw.NextDouble() - 0.5)), 20, 100);
            return new SiteHour(
                begin.AddHours(hour),
                new MoistAir(Temperature.FromDegreesCelsius(celsius), RelativeHumidity.FromPercent(humidity)),
                Temperature.FromDegreesCelsius(celsius + (2 * day)),
                draw.Next(12) == 0);
        }));
        ArgumentOutOfRangeException.ThrowIfZero(this.Windows().Windows.Count);
    }

    [Benchmark]
    public WorkWindows Windows() => new(this.log, RuleSet.Default, "site");
}
