using System.Diagnostics;
using System.Globalization;

namespace SacrificialTape.Benchmarks;

/// <summary>Cost of a line at 10,000 and at 100,000 lines, warm, in one process and in turn: the ratio is the figure.</summary>
internal static class SurveyScaling
{
    private const int Rounds = 7;

    internal static int Run()
    {
        _ = Cost(10_000);
        var small = new List<(double Us, long Bytes)>();
        var large = new List<(double Us, long Bytes)>();
        for (int i = 0; i < Rounds; i++)
        {
            // Ten small ones against one large one: the same number of lines in the same stretch of time.
            small.Add(Average([.. Enumerable.Range(0, 10).Select(static _ => Cost(10_000))]));
            large.Add(Cost(100_000));
        }

        double ratio = Median(large.Zip(small, static (l, s) => l.Us / s.Us));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"per line: {Median(small.Select(static s => s.Us)):0.00} us at 10,000 lines, {Median(large.Select(static l => l.Us)):0.00} us at 100,000; ratio {ratio:0.00}; {small[^1].Bytes} and {large[^1].Bytes} bytes"));
        return 0;
    }

    private static (double Us, long Bytes) Cost(int lines)
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        long before = GC.GetAllocatedBytesForCurrentThread();
        long start = Stopwatch.GetTimestamp();
        GC.KeepAlive(InventedSurvey.Of(lines).Estimate());
        double us = Stopwatch.GetElapsedTime(start).TotalMicroseconds;
        return (us / lines, (GC.GetAllocatedBytesForCurrentThread() - before) / lines);
    }

    private static (double Us, long Bytes) Average(IReadOnlyList<(double Us, long Bytes)> costs) =>
        (costs.Average(static cost => cost.Us), (long)costs.Average(static cost => cost.Bytes));

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }
}
