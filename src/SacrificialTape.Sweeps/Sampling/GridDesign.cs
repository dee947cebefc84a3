namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Every combination of the levels of all inputs; the last input changes from row to row.</summary>
/// <remarks>Distributions have no levels: list their values or state a range.</remarks>
public sealed class GridDesign : Design
{
    /// <inheritdoc/>
    public override long RowsOf(SweepInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        if (inputs.Lower is not null)
        {
            throw new ArgumentException("A full grid takes every combination: its inputs cannot go together.", nameof(inputs));
        }

        long rows = 1;
        foreach (SweepInput input in inputs.All)
        {
            int levels = input.Values.Levels ?? throw new ArgumentException(
                $"A full grid needs levels, and '{input}' has none: list its values, or state a range with its number of levels.", nameof(inputs));
            try
            {
                rows = checked(rows * levels);
            }
            catch (OverflowException)
            {
                throw new ArgumentException("The grid has more rows than can be counted: take fewer levels.", nameof(inputs));
            }
        }

        return rows;
    }

    /// <summary>The design in a few words.</summary>
    public override string ToString() => "full grid";

    private protected override void Values(SweepBlock block)
    {
        long step = 1;
        for (int i = block.Inputs.Count - 1; i >= 0; i--)
        {
            InputValues values = block.Inputs.All[i].Values;
            int levels = values.Levels!.Value;
            Span<double> column = block.Column(i);
            for (int row = 0; row < column.Length; row++)
            {
                column[row] = values.Level((int)((block.FirstRow + row) / step % levels));
            }

            step *= levels;
        }
    }
}
