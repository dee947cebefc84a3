using Orleans.Placement;
using SacrificialTape.Sweeps;
using SacrificialTape.Sweeps.Files;

namespace SweepCluster;

/// <summary>A slice on whichever silo has room.</summary>
[RandomPlacement]
public sealed class SliceGrain : Grain, ISliceGrain
{
    public async Task<byte[][]> Work(SliceOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);

        // Off the silo's own threads, so that it goes on answering the others.
        byte[][] saved = await Task.Run(() => Now(order));
        this.DeactivateOnIdle();
        return saved;
    }

    private static byte[][] Now(SliceOrder order)
    {
        ClusterStudy study = ClusterStudy.Of(order);
        if (study.Table.Fingerprint != order.Fingerprint)
        {
            // Another version of the library, or a machine whose last digits are others: its slices would not join to the same bits.
            throw new InvalidOperationException("This silo makes another study of that order: its library or its arithmetic is another.");
        }

        AnswerSummary[] kept = study.Kept();
        StudyTable table = study.Table;
        table.Study.Run(kept, table.Study.Slice(order.Slice, table.Slices));
        return [.. kept.Select(static one => one.Summary.Save())];
    }
}
