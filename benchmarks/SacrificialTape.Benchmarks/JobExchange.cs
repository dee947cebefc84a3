using System.Diagnostics;
using System.Globalization;
using System.Text;
using SacrificialTape.Documents;
using SacrificialTape.Jobs;

namespace SacrificialTape.Benchmarks;

/// <summary>A job written as a document and read back, at a size and at a tenth of it: time on the clock and on the processor, bytes of file, bytes of memory.</summary>
internal static class JobExchange
{
    private const int Times = 3;

    internal static int Run(int lines)
    {
        foreach (int count in new[] { lines / 10, lines })
        {
            Once("of pipe", InventedSurvey.Of(count), count);
            Once("of every shape", InventedSurvey.Mixed(count), count);
        }

        return 0;
    }

    private static void Once(string kind, Job job, int lines)
    {
        var document = new JobDocument(job);
        for (int i = 0; i < Times; i++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            var clock = Stopwatch.StartNew();
            TimeSpan work = Process.GetCurrentProcess().TotalProcessorTime;
            byte[] text = Encoding.UTF8.GetBytes(document.Write());
            TimeSpan written = clock.Elapsed;
            long writing = GC.GetAllocatedBytesForCurrentThread() - before;
            JobDocument read = JobDocument.ReadUtf8(text);
            TimeSpan both = clock.Elapsed;
            long reading = GC.GetAllocatedBytesForCurrentThread() - before - writing;
            work = Process.GetCurrentProcess().TotalProcessorTime - work;
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{lines} lines {kind}: written in {written.TotalMilliseconds:0} ms ({writing / lines} bytes of memory a line), read in {(both - written).TotalMilliseconds:0} ms ({reading / lines} bytes a line), {text.Length / lines} bytes of file a line, {work.TotalMilliseconds:0} ms of processor time for both, {(read.Equals(document) ? "equal" : "NOT EQUAL")}"));
        }
    }
}
