namespace SweepCluster;

/// <summary>Which slice of which study is wanted: all that a silo needs to work it out.</summary>
[GenerateSerializer]
[Immutable]
public sealed record SliceOrder
{
    [Id(0)]
    public required bool Sensitivity { get; init; }

    [Id(1)]
    public required long Rows { get; init; }

    [Id(2)]
    public required ulong Seed { get; init; }

    [Id(3)]
    public required int SliceRows { get; init; }

    [Id(4)]
    public required int Slice { get; init; }

    /// <summary>The study as the one who asks knows it.</summary>
    [Id(5)]
    public required string Fingerprint { get; init; }
}
