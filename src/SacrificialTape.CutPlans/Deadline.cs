using System.Diagnostics;

namespace SacrificialTape.CutPlans;

/// <summary>The time left of a search; none once the caller has ended it.</summary>
internal sealed class Deadline(TimeSpan limit, CancellationToken cancellation)
{
    private readonly long start = Stopwatch.GetTimestamp();

    internal CancellationToken Cancellation => cancellation;

    internal TimeSpan Left => cancellation.IsCancellationRequested ? TimeSpan.Zero : limit - Stopwatch.GetElapsedTime(this.start);

    internal bool Passed => this.Left <= TimeSpan.Zero;
}
