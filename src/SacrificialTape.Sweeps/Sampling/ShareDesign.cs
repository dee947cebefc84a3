namespace SacrificialTape.Sweeps.Sampling;

/// <summary>A design that chooses for each input a share between 0 and 1, which the input turns into a value.</summary>
public abstract class ShareDesign : Design
{
    private protected ShareDesign(ulong seed) => this.Seed = seed;

    /// <summary>What all random choices start from.</summary>
    public ulong Seed { get; }

    /// <summary>Shares of consecutive rows in one column.</summary>
    internal abstract void Shares(int column, long firstRow, Span<double> shares);

    /// <summary>How many points there are where each row is a point of its own.</summary>
    internal abstract long Points { get; }

    /// <summary>Most columns that there can be.</summary>
    internal virtual int MostColumns => int.MaxValue;

    /// <inheritdoc/>
    public override long RowsOf(SweepInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        return inputs.Count <= this.MostColumns
            ? this.Points
            : throw new ArgumentException($"This design takes at most {this.MostColumns} inputs, and there are {inputs.Count}.", nameof(inputs));
    }

    private protected override void Values(SweepBlock block)
    {
        for (int i = 0; i < block.Inputs.Count; i++)
        {
            this.Shares(i, block.FirstRow, block.Column(i));
        }

        if (block.Inputs.Lower is { } lower)
        {
            CorrelationKernel.Mix(lower, block);
        }

        for (int i = 0; i < block.Inputs.Count; i++)
        {
            block.Inputs.All[i].Values.Draw(block.Column(i));
        }
    }
}
