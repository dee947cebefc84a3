using System.Diagnostics;
using System.Globalization;
using SacrificialTape.Jobs;

namespace SacrificialTape.Benchmarks;

/// <summary>
/// Cost of a line at 10,000 and at 100,000 lines, warm, in one process and in turn: the ratio is the figure. Once for
/// working out a survey that exists, findings included, and once for making the survey's objects as well.
/// </summary>
internal static class SurveyScaling
{
    private const int Small = 10_000;
    private const int Large = 100_000;
    private const int Rounds = 7;

    internal static int Run()
    {
        // Ten surveys of their own, since one worked out ten times over would lie in the processor's cache.
        Job[] small = [.. Enumerable.Range(0, Large / Small).Select(static _ => InventedSurvey.Of(Small))];
        Job large = InventedSurvey.Of(Large);
        Compare("working out", i => WorkOut(small[i]), () => WorkOut(large));
        Compare("making and working out", static _ => WorkOut(InventedSurvey.Of(Small)), static () => WorkOut(InventedSurvey.Of(Large)));
        return 0;
    }

    private static void Compare(string what, Action<int> small, Action large)
    {
        small(0);
        large();
        var ratios = new List<double>();
        (double Us, long Bytes) atSmall = default;
        (double Us, long Bytes) atLarge = default;
        for (int i = 0; i < Rounds; i++)
        {
            // Ten small ones against one large one: the same number of lines in the same stretch of time.
            (double Us, long Bytes)[] ten = [.. Enumerable.Range(0, Large / Small).Select(one => Cost(() => small(one), Small))];
            atSmall = (ten.Average(static cost => cost.Us), ten[^1].Bytes);
            atLarge = Cost(large, Large);
            ratios.Add(atLarge.Us / atSmall.Us);
        }

        ratios.Sort();
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what}, per line: {atSmall.Us:0.00} us at {Small} lines, {atLarge.Us:0.00} us at {Large}; ratio {ratios[Rounds / 2]:0.00} ({ratios[0]:0.00} to {ratios[^1]:0.00}); {atSmall.Bytes} and {atLarge.Bytes} bytes allocated"));
    }

    private static void WorkOut(Job job)
    {
        JobEstimate estimate = job.Estimate();
        int findings = estimate.Findings.Count;
        GC.KeepAlive(estimate);
        ArgumentOutOfRangeException.ThrowIfZero(findings);
    }

    private static (double Us, long Bytes) Cost(Action work, int lines)
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        long before = GC.GetAllocatedBytesForCurrentThread();
        long start = Stopwatch.GetTimestamp();
        work();
        double us = Stopwatch.GetElapsedTime(start).TotalMicroseconds;
        return (us / lines, (GC.GetAllocatedBytesForCurrentThread() - before) / lines);
    }
}
