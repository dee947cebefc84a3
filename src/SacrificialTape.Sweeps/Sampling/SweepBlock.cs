namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Some consecutive rows of a sweep: the value of each input, column by column.</summary>
public sealed class SweepBlock
{
    private readonly double[][] columns;

    internal SweepBlock(SweepInputs inputs, int capacity)
    {
        this.Inputs = inputs;
        this.columns = new double[inputs.Count][];
        for (int i = 0; i < this.columns.Length; i++)
        {
            this.columns[i] = new double[capacity];
        }
    }

    /// <summary>The inputs.</summary>
    public SweepInputs Inputs { get; }

    /// <summary>The first row, counted in the whole sweep from 0.</summary>
    public long FirstRow { get; internal set; }

    /// <summary>How many rows there are.</summary>
    public int Rows { get; internal set; }

    /// <summary>The values of an input.</summary>
    /// <param name="input">Where the input stands, from 0.</param>
    public ReadOnlySpan<double> this[int input] => this.columns[input].AsSpan(0, this.Rows);

    /// <summary>The values of an input.</summary>
    /// <param name="name">Name of the input.</param>
    /// <exception cref="ArgumentException">No input has that name.</exception>
    public ReadOnlySpan<double> this[string name] => this[this.Inputs.IndexOf(name)];

    internal Span<double> Column(int input) => this.columns[input].AsSpan(0, this.Rows);
}
