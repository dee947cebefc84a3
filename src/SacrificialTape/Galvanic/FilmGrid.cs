namespace SacrificialTape.Galvanic;

/// <summary>The nodes of one grid and the numbers at them, in one rented array.</summary>
internal ref struct FilmGrid
{
    internal readonly Span<double> X;
    internal readonly Span<double> E;
    internal readonly Span<double> H;
    internal readonly Span<double> R;
    internal readonly Span<double> D;
    private readonly Span<double> work;

    internal FilmGrid(double[] rented, int most)
    {
        this.X = rented.AsSpan(0, most);
        this.E = rented.AsSpan(most, most);
        this.H = rented.AsSpan(2 * most, most);
        this.R = rented.AsSpan(3 * most, most);
        this.D = rented.AsSpan(4 * most, most);
        this.work = rented.AsSpan(5 * most, most);
    }

    /// <summary>Nodes.</summary>
    internal int Count { get; private set; }

    /// <summary>Intervals of each piece.</summary>
    internal int Intervals { get; private set; }

    /// <summary>Puts the nodes.</summary>
    internal void Lay(FilmPiece[] pieces, int intervals)
    {
        this.Intervals = intervals;
        this.Count = (pieces.Length * intervals) + 1;
        double start = 0;
        for (int p = 0; p < pieces.Length; p++)
        {
            for (int j = 0; j < intervals; j++)
            {
                this.X[(p * intervals) + j] = start + pieces[p].At((double)j / intervals);
            }

            start += pieces[p].LengthMm;
        }

        this.X[this.Count - 1] = start;
        for (int p = 0; p < pieces.Length; p++)
        {
            double before = 0;
            for (int j = 0; j < intervals; j++)
            {
                double next = j == intervals - 1 ? pieces[p].LengthMm : pieces[p].At((j + 1.0) / intervals);
                this.H[(p * intervals) + j] = next - before;
                before = next;
            }
        }
    }

    /// <summary>Starts from the potential that each piece has alone.</summary>
    internal readonly void StartAtRest(FilmPiece[] pieces)
    {
        double last = 0;
        foreach (FilmPiece piece in pieces)
        {
            last = piece.Electrode.IsInert ? last : piece.Electrode.Rest;
        }

        for (int p = pieces.Length - 1; p >= 0; p--)
        {
            last = pieces[p].Electrode.IsInert ? last : pieces[p].Electrode.Rest;
            this.E.Slice(p * this.Intervals, this.Intervals + 1).Fill(last);
        }
    }

    /// <summary>Lays a grid of other nodes and carries the potentials over by straight lines.</summary>
    internal void LayOver(FilmPiece[] pieces, int intervals)
    {
        int old = this.Count;
        this.X[..old].CopyTo(this.work);
        this.E[..old].CopyTo(this.R);
        this.Lay(pieces, intervals);
        int from = 0;
        for (int j = 0; j < this.Count; j++)
        {
            while (from < old - 2 && this.work[from + 1] < this.X[j])
            {
                from++;
            }

            double share = (this.X[j] - this.work[from]) / (this.work[from + 1] - this.work[from]);
            this.E[j] = this.R[from] + (share * (this.R[from + 1] - this.R[from]));
        }
    }

    /// <summary>Halves every interval; old nodes stay.</summary>
    internal void Halve(FilmPiece[] pieces, int intervals)
    {
        for (int j = this.Count - 1; j > 0; j--)
        {
            this.E[2 * j] = this.E[j];
        }

        this.Lay(pieces, intervals);
        for (int j = 1; j < this.Count; j += 2)
        {
            // Cubic through four old neighbours inside a piece, in the smooth coordinate of its grid; straight at its ends.
            int within = j % intervals;
            this.E[j] = within >= 3 && within <= intervals - 3
                ? ((9 * (this.E[j - 1] + this.E[j + 1])) - this.E[j - 3] - this.E[j + 3]) / 16
                : (this.E[j - 1] + this.E[j + 1]) / 2;
        }
    }

    /// <summary>Solves the symmetric tridiagonal system of residual and diagonal; the answer is the largest move.</summary>
    internal readonly double SolveForStep(double spread)
    {
        for (int j = 1; j < this.Count; j++)
        {
            double beside = spread / this.H[j - 1];
            double share = beside / this.D[j - 1];
            this.D[j] -= share * beside;
            this.R[j] += share * this.R[j - 1];
        }

        double next = this.R[this.Count - 1] / this.D[this.Count - 1];
        double longest = Math.Abs(next);
        this.work[this.Count - 1] = next;
        for (int j = this.Count - 2; j >= 0; j--)
        {
            next = (this.R[j] + (spread / this.H[j] * next)) / this.D[j];
            this.work[j] = next;
            longest = Math.Max(longest, Math.Abs(next));
        }

        return longest;
    }

    /// <summary>Moves the potentials along the step last solved for.</summary>
    internal readonly void Move(double factor)
    {
        for (int j = 0; j < this.Count; j++)
        {
            this.E[j] += factor * this.work[j];
        }
    }
}
