using System.Diagnostics;
using System.Globalization;
using SacrificialTape.Jobs;

namespace SacrificialTape.Benchmarks;

/// <summary>One survey in a fresh process, so that the whole process can be timed from cold.</summary>
internal static class SurveyOnce
{
    internal static int Run(int lines, bool mixed)
    {
        var clock = Stopwatch.StartNew();
        long before = GC.GetAllocatedBytesForCurrentThread();
        JobEstimate estimate = (mixed ? InventedSurvey.Mixed(lines) : InventedSurvey.Of(lines)).Estimate();
        long bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        TimeSpan sinceStart = DateTime.Now - Process.GetCurrentProcess().StartTime;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{lines} lines{(mixed ? " of every shape" : " of pipe")}: {clock.Elapsed.TotalMilliseconds:0} ms in the library, {sinceStart.TotalMilliseconds:0} ms since the process began, {bytes / lines} bytes per line, {estimate.TakeOff.Stocks.Sum(static stock => stock.Rolls)} rolls, {estimate.Findings.Count} findings"));
        return 0;
    }
}
