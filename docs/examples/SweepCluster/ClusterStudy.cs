using System.Collections.Concurrent;
using CoastStudy;
using SacrificialTape.Sweeps;
using SacrificialTape.Sweeps.Files;

namespace SweepCluster;

/// <summary>One of the two studies of the coast, made once in each process.</summary>
internal sealed class ClusterStudy
{
    // The chance that is asked for is not part of the comparison.
    private const double RequiredYears = 25;

    private static readonly ConcurrentDictionary<(bool, long, ulong, int), Lazy<ClusterStudy>> Known = new();

    private ClusterStudy(bool sensitivity, long rows, ulong seed, int sliceRows)
    {
        this.Table = sensitivity ? CoastSite.Sensitivity(rows, seed, sliceRows) : CoastSite.Spread(rows, seed, sliceRows);
        this.Kept = sensitivity ? () => CoastSite.SensitivityKept(rows, seed) : static () => CoastSite.SpreadKept(RequiredYears);
    }

    internal StudyTable Table { get; }

    /// <summary>Empty summaries.</summary>
    internal Func<AnswerSummary[]> Kept { get; }

    internal static ClusterStudy Of(SliceOrder order) => Of(order.Sensitivity, order.Rows, order.Seed, order.SliceRows);

    internal static ClusterStudy Of(bool sensitivity, long rows, ulong seed, int sliceRows) => Known.GetOrAdd(
        (sensitivity, rows, seed, sliceRows),
        static key => new Lazy<ClusterStudy>(() => new ClusterStudy(key.Item1, key.Item2, key.Item3, key.Item4))).Value;
}
