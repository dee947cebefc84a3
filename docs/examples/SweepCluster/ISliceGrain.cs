namespace SweepCluster;

/// <summary>Works out one slice. It keeps nothing: asked twice, here or elsewhere, it gives the same bytes.</summary>
public interface ISliceGrain : IGrainWithStringKey
{
    /// <summary>The saved summaries of the slice, in the order of the study's.</summary>
    Task<byte[][]> Work(SliceOrder order);
}
