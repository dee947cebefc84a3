namespace SacrificialTape.Sweeps.Sampling;

/// <summary>
/// Rows for Morris screening: paths on a grid of shares along which one input after another, in random order, jumps by half of
/// its levels (M. D. Morris, Technometrics 33 (1991) 161-174; recalled, check before use). A level is the middle of its share, so that
/// distributions without ends are served too.
/// </summary>
public sealed class MorrisDesign : ShareDesign
{
    /// <summary>Chooses the rows.</summary>
    /// <param name="seed">What all random choices start from.</param>
    /// <param name="paths">How many paths, at least 2.</param>
    /// <param name="levels">How many levels an input has, an even number from 4 on.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public MorrisDesign(ulong seed, int paths, int levels = 4)
        : base(seed)
    {
        this.Paths = paths >= 2 ? paths : throw new ArgumentOutOfRangeException(nameof(paths), paths, "At least 2.");
        this.Levels = levels >= 4 && levels % 2 == 0
            ? levels
            : throw new ArgumentOutOfRangeException(nameof(levels), levels, "An even number, at least 4.");
    }

    /// <summary>How many paths there are.</summary>
    public int Paths { get; }

    /// <summary>How many levels an input has.</summary>
    public int Levels { get; }

    internal override long Points => this.Paths;

    /// <inheritdoc/>
    public override long RowsOf(SweepInputs inputs)
    {
        long paths = base.RowsOf(inputs);
        return inputs.Lower is null
            ? paths * this.RowsTogether(inputs)
            : throw new ArgumentException("Morris screening needs independent inputs, and some of these go together.", nameof(inputs));
    }

    internal override int RowsTogether(SweepInputs inputs) => inputs.Count + 1;

    /// <summary>The design in a few words.</summary>
    public override string ToString() => $"{this.Paths} Morris paths on {this.Levels} levels, seed {this.Seed}";

    internal override void Shares(int column, long firstRow, Span<double> shares) => throw new NotSupportedException();

    /// <summary>For each input of a path its place in the order of jumps, and whether it jumps up.</summary>
    internal (int[] Place, bool[] Up) Path(long path, int inputs)
    {
        int[] order = [.. Enumerable.Range(0, inputs)];
        bool[] up = new bool[inputs];
        for (int i = inputs - 1; i >= 0; i--)
        {
            (ulong choice, ulong direction) = PhiloxKernel.Words(this.Seed, PhiloxKernel.Purpose.Trajectory, (uint)i, (ulong)path);
            int other = (int)Math.BigMul(choice, (ulong)(i + 1), out _);
            (order[i], order[other]) = (order[other], order[i]);
            up[i] = (direction & 1) == 0;
        }

        int[] place = new int[inputs];
        for (int i = 0; i < inputs; i++)
        {
            place[order[i]] = i;
        }

        return (place, up);
    }

    private protected override void Values(SweepBlock block)
    {
        int inputs = block.Inputs.Count;
        int stride = inputs + 1;
        int half = this.Levels / 2;
        long known = -1;
        int[] place = [];
        bool[] up = [];
        int[] low = new int[inputs];
        for (int row = 0; row < block.Rows; row++)
        {
            long path = (block.FirstRow + row) / stride;
            int step = (int)((block.FirstRow + row) % stride);
            if (path != known)
            {
                known = path;
                (place, up) = this.Path(path, inputs);
                for (int i = 0; i < inputs; i++)
                {
                    ulong word = PhiloxKernel.Words(this.Seed, PhiloxKernel.Purpose.Share, (uint)i, (ulong)path).First;
                    low[i] = (int)Math.BigMul(word, (ulong)half, out _);
                }
            }

            for (int i = 0; i < inputs; i++)
            {
                bool high = place[i] < step == up[i];
                double share = (low[i] + (high ? half : 0) + 0.5) / this.Levels;
                block.Column(i)[row] = block.Inputs.All[i].Values.Draw(share);
            }
        }
    }
}
