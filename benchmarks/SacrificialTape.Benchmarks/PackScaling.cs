using System.Diagnostics;
using System.Globalization;
using SacrificialTape.Jobs;
using SacrificialTape.Reports;

namespace SacrificialTape.Benchmarks;

/// <summary>Job packs of 1,000 and 10,000 lines in one process: processor time, memory taken, and their ratio.</summary>
internal static class PackScaling
{
    private const int Few = 1_000;
    private const int Many = 10_000;
    private const int Rounds = 5;

    internal static int Run()
    {
        JobEstimate few = InventedSurvey.Mixed(Few).Estimate();
        JobEstimate many = InventedSurvey.Mixed(Many).Estimate();
        _ = Measured(few);
        (double fewMs, double fewMb, int fewKb) = Best(few);
        (double manyMs, double manyMb, int manyKb) = Best(many);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{Few} lines: {fewMs:0} ms, {fewMb:0} MB taken, page {fewKb} kB; {Many} lines: {manyMs:0} ms, {manyMb:0} MB, {manyKb} kB; ratios {manyMs / fewMs:0.0} and {manyMb / fewMb:0.0} for {Many / Few} times the lines"));
        return 0;
    }

    private static (double Milliseconds, double Megabytes, int Kilobytes) Best(JobEstimate estimate) =>
        Enumerable.Range(0, Rounds).Select(_ => Measured(estimate)).MinBy(static one => one.Milliseconds);

    private static (double Milliseconds, double Megabytes, int Kilobytes) Measured(JobEstimate estimate)
    {
        using Process self = Process.GetCurrentProcess();
        TimeSpan before = self.TotalProcessorTime;
        long bytes = GC.GetAllocatedBytesForCurrentThread();
        string html = new JobPack(estimate).ToHtml();
        bytes = GC.GetAllocatedBytesForCurrentThread() - bytes;
        self.Refresh();
        return ((self.TotalProcessorTime - before).TotalMilliseconds, bytes / 1e6, html.Length / 1000);
    }
}
