namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Plain random rows: every one independent of the others. More rows later leave the first ones as they are.</summary>
public sealed class RandomDesign : ShareDesign
{
    /// <summary>Chooses the rows.</summary>
    /// <param name="seed">What all random choices start from.</param>
    /// <param name="rows">How many, at least 1 and at most 4 294 967 295.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number of rows is outside its range.</exception>
    public RandomDesign(ulong seed, long rows)
        : base(seed) => this.Points = AtLeastOne(rows, nameof(rows));

    internal override long Points { get; }

    /// <summary>The design in a few words.</summary>
    public override string ToString() => $"{this.Points} random rows, seed {this.Seed}";

    internal override void Shares(int column, long firstRow, Span<double> shares)
    {
        for (int i = 0; i < shares.Length; i++)
        {
            shares[i] = PhiloxKernel.Share(PhiloxKernel.Words(this.Seed, PhiloxKernel.Purpose.Share, (uint)column, (ulong)(firstRow + i)).First);
        }
    }
}
