using System.Diagnostics;

namespace SacrificialTape.CutPlans;

/// <summary>The time left of a search.</summary>
internal sealed class Deadline(TimeSpan limit)
{
    private readonly long start = Stopwatch.GetTimestamp();

    internal TimeSpan Left => limit - Stopwatch.GetElapsedTime(this.start);

    internal bool Passed => this.Left <= TimeSpan.Zero;
}
