namespace SacrificialTape.Sweeps.Sampling;

/// <summary>
/// Rows for Sobol indices: each point has two independent rows, A and B, and for each input a row A that has this input of B.
/// Inputs must be independent (A. Saltelli and others, Comput. Phys. Commun. 181 (2010) 259-270; recalled, check before use).
/// </summary>
public sealed class PickFreezeDesign : ShareDesign
{
    private readonly ShareDesign points;

    /// <summary>Chooses the rows.</summary>
    /// <param name="points">The points; a Sobol design of a power of two of rows serves best, and takes up to 16 inputs.</param>
    /// <exception cref="ArgumentException">The points are such a design themselves.</exception>
    public PickFreezeDesign(ShareDesign points)
        : base(points is null ? throw new ArgumentNullException(nameof(points)) : points.Seed) =>
        this.points = points is RandomDesign or LatinHypercubeDesign or SobolDesign
            ? points
            : throw new ArgumentException("Random rows, a Latin hypercube or a Sobol sequence.", nameof(points));

    internal override long Points => this.points.Points;

    internal override int MostColumns => this.points.MostColumns / 2;

    /// <inheritdoc/>
    public override long RowsOf(SweepInputs inputs)
    {
        long all = base.RowsOf(inputs);
        return inputs.Lower is null
            ? all * this.RowsTogether(inputs)
            : throw new ArgumentException("Sobol indices need independent inputs, and some of these go together.", nameof(inputs));
    }

    internal override int RowsTogether(SweepInputs inputs) => inputs.Count + 2;

    /// <summary>The design in a few words.</summary>
    public override string ToString() => $"for Sobol indices: {this.points}";

    internal override void Shares(int column, long firstRow, Span<double> shares) => throw new NotSupportedException();

    private protected override void Values(SweepBlock block)
    {
        if (block.Rows == 0)
        {
            return;
        }

        int inputs = block.Inputs.Count;
        int stride = inputs + 2;
        long firstPoint = block.FirstRow / stride;
        int count = (int)(((block.FirstRow + block.Rows - 1) / stride) - firstPoint + 1);
        double[] a = new double[count];
        double[] b = new double[count];
        for (int i = 0; i < inputs; i++)
        {
            this.points.Shares(i, firstPoint, a);
            this.points.Shares(inputs + i, firstPoint, b);
            Span<double> column = block.Column(i);
            for (int row = 0; row < column.Length; row++)
            {
                long place = block.FirstRow + row;
                int point = (int)((place / stride) - firstPoint);
                int kind = (int)(place % stride);
                column[row] = kind == 1 || kind == i + 2 ? b[point] : a[point];
            }

            block.Inputs.All[i].Values.Draw(column);
        }
    }
}
