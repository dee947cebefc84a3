using System.Buffers;

namespace SacrificialTape.Galvanic;

/// <summary>
/// Potential along a surface under a thin film: sigma d E'' = i(E) with insulated ends, by finite volumes on graded
/// grids that are halved again and again. Each grid is solved by a damped Newton method on a tridiagonal system; the
/// answers of three or more grids are extrapolated to a step of zero, and the last change is the error estimate.
/// Lengths in mm, film in um: sigma d is then in A/m2 mm2/V, and currents over an edge are in mA/m.
/// </summary>
internal sealed class ThinFilmSolver
{
    /// <summary>Intervals of each piece on the coarsest grid.</summary>
    internal const int Coarsest = 16;

    private const int MostGrids = 10;
    private const int MostColumns = 4;
    private const int MostNewtonSteps = 80;

    private readonly FilmPiece[] pieces;
    private readonly double spread;
    private readonly double scale;
    private readonly int segments;

    private ThinFilmSolver(double spread, FilmPiece[] pieces, int segments)
    {
        this.spread = spread;
        this.pieces = pieces;
        this.segments = segments;
        double low = double.PositiveInfinity;
        double high = double.NegativeInfinity;
        foreach (FilmPiece piece in pieces)
        {
            if (!piece.Electrode.IsInert)
            {
                low = Math.Min(low, piece.Electrode.Rest);
                high = Math.Max(high, piece.Electrode.Rest);
            }
        }

        this.scale = high > low ? high - low : 1;
    }

    /// <summary>Solves for segments from left to right.</summary>
    /// <param name="spread">sigma d, S/m times um.</param>
    /// <param name="segments">Electrode and length in mm of each; at least one is not inert.</param>
    /// <param name="relative">Error wanted, as a share of the difference between the rest potentials.</param>
    internal static ThinFilmAnswer Solve(double spread, ReadOnlySpan<(ElectrodeTerms Electrode, double LengthMm)> segments, double relative)
    {
        var pieces = new List<FilmPiece>(2 * segments.Length);
        for (int i = 0; i < segments.Length; i++)
        {
            bool left = i > 0;
            bool right = i < segments.Length - 1;
            (ElectrodeTerms electrode, double length) = segments[i];
            if (left && right)
            {
                pieces.Add(new FilmPiece(i, electrode, length / 2, fineOnLeft: true, 0));
                pieces.Add(new FilmPiece(i, electrode, length / 2, fineOnLeft: false, 0));
            }
            else
            {
                pieces.Add(new FilmPiece(i, electrode, length, fineOnLeft: left, 0));
            }
        }

        return new ThinFilmSolver(spread, [.. pieces], segments.Length).Run(relative);
    }

    private ThinFilmAnswer Run(double relative)
    {
        int kept = (this.pieces.Length * Coarsest) + 1;
        int most = (this.pieces.Length * (Coarsest << (MostGrids - 1))) + 1;
        double[] pool = ArrayPool<double>.Shared.Rent(most * 6);
        try
        {
            var grid = new FilmGrid(pool, most);
            this.Grade(ref grid);
            return this.Refine(ref grid, kept, relative);
        }
        finally
        {
            ArrayPool<double>.Shared.Return(pool);
        }
    }

    // A first solution tells how steep each electrode is where it works; the grids are then laid to that.
    private void Grade(ref FilmGrid grid)
    {
        for (int i = 0; i < this.pieces.Length; i++)
        {
            this.pieces[i] = this.pieces[i].GradedFor(this.Decay(this.pieces[i].Electrode, this.pieces[i].Electrode.Rest, this.pieces[i].LengthMm));
        }

        grid.Lay(this.pieces, Coarsest);
        grid.StartAtRest(this.pieces);
        this.Newton(ref grid);
        for (int i = 0; i < this.pieces.Length; i++)
        {
            double decay = double.PositiveInfinity;
            for (int j = i * Coarsest; j <= (i + 1) * Coarsest; j++)
            {
                decay = Math.Min(decay, this.Decay(this.pieces[i].Electrode, grid.E[j], this.pieces[i].LengthMm));
            }

            this.pieces[i] = this.pieces[i].GradedFor(decay);
        }
    }

    private ThinFilmAnswer Refine(ref FilmGrid grid, int kept, double relative)
    {
        int row = kept + this.segments;
        var table = new double[MostColumns * row];
        var fresh = new double[row];
        var best = new double[row];
        double error = double.PositiveInfinity;
        double residual = 0;
        double[] distance = [];
        int grids = 0;
        while (grids < MostGrids)
        {
            int n = Coarsest << grids;
            if (grids == 0)
            {
                grid.LayOver(this.pieces, n);
                distance = grid.X[..kept].ToArray();
            }
            else
            {
                grid.Halve(this.pieces, n);
            }

            residual = this.Newton(ref grid);
            this.Pick(grid, n, kept, fresh);
            Extrapolate(table, fresh, grids);
            error = grids == 0 ? error : FarthestMove(fresh.AsSpan(0, kept), best) / this.scale;
            (fresh, best) = (best, fresh);
            grids++;
            if (grids > 2 && error <= relative)
            {
                break;
            }
        }

        return new ThinFilmAnswer(
            distance,
            best[..kept],
            best[kept..],
            [.. this.pieces.Select(static piece => piece.Segment)],
            error,
            residual,
            grids,
            grid.Count - 1);
    }

    // Values at the nodes of the coarsest grid, which every finer one has too, then the current of each segment.
    private void Pick(in FilmGrid grid, int n, int kept, Span<double> into)
    {
        int stride = n / Coarsest;
        for (int i = 0; i < kept; i++)
        {
            into[i] = grid.E[i * stride];
        }

        into[kept..].Clear();
        for (int p = 0; p < this.pieces.Length; p++)
        {
            ElectrodeTerms electrode = this.pieces[p].Electrode;
            double sum = 0;
            int last = (p + 1) * n;
            for (int j = p * n; j <= last; j++)
            {
                double width = ((j > p * n ? grid.H[j - 1] : 0) + (j < last ? grid.H[j] : 0)) / 2;
                sum += width * electrode.Current(grid.E[j]);
            }

            into[kept + this.pieces[p].Segment] += sum;
        }
    }

    // One more row of the table of extrapolations, which leaves the best values in place of the fresh ones.
    private static void Extrapolate(double[] table, Span<double> fresh, int grid)
    {
        int columns = Math.Min(grid, MostColumns - 1);
        double power = 1;
        for (int column = 0; column <= columns; column++)
        {
            Span<double> old = table.AsSpan(column * fresh.Length, fresh.Length);
            power *= 4;
            for (int i = 0; i < fresh.Length; i++)
            {
                double now = fresh[i];
                double before = old[i];
                old[i] = now;

                // The last column has no older value to extrapolate from, or none that would still improve it.
                fresh[i] = column < columns ? now + ((now - before) / (power - 1)) : now;
            }
        }
    }

    private static double FarthestMove(ReadOnlySpan<double> now, ReadOnlySpan<double> before)
    {
        double farthest = 0;
        for (int i = 0; i < now.Length; i++)
        {
            farthest = Math.Max(farthest, Math.Abs(now[i] - before[i]));
        }

        return farthest;
    }

    private double Decay(in ElectrodeTerms electrode, double potential, double length)
    {
        double slope = electrode.Slope(potential);
        return slope > 0 ? Math.Min(length, Math.Sqrt(this.spread / slope)) : length;
    }

    // The problem is the minimum of a convex energy: Newton's direction always goes down, so shortening it always ends.
    private double Newton(ref FilmGrid grid)
    {
        double size = this.Assemble(grid);
        for (int step = 0; step < MostNewtonSteps; step++)
        {
            double longest = grid.SolveForStep(this.spread);
            double factor = 1;
            grid.Move(factor);
            double next = this.Assemble(grid);
            while (!(next <= size) && factor > 1e-6)
            {
                factor /= 2;
                grid.Move(-factor);
                next = this.Assemble(grid);
            }

            size = next;

            // Each full step squares the error (times a slope of at most some 200 for each volt): after this one it is rounding.
            if (factor == 1 && longest <= 1e-8 * this.scale)
            {
                break;
            }
        }

        return size;
    }

    // Residual and diagonal of every node; the answer is the norm of the residual.
    private double Assemble(in FilmGrid grid)
    {
        int n = grid.Intervals;
        Span<double> e = grid.E;
        Span<double> h = grid.H;
        Span<double> residual = grid.R;
        Span<double> diagonal = grid.D;
        int count = grid.Count;
        residual[..count].Clear();
        diagonal[..count].Clear();
        for (int p = 0; p < this.pieces.Length; p++)
        {
            ref readonly FilmPiece piece = ref this.pieces[p];
            ElectrodeTerms electrode = piece.Electrode;
            int first = p * n;
            int last = first + n;
            for (int j = first; j < last; j++)
            {
                double conductance = this.spread / h[j];
                double flow = conductance * (e[j + 1] - e[j]);
                residual[j] += flow;
                residual[j + 1] -= flow;
                diagonal[j] += conductance;
                diagonal[j + 1] += conductance;
            }

            if (electrode.IsInert)
            {
                continue;
            }

            for (int j = first; j <= last; j++)
            {
                double width = ((j > first ? h[j - 1] : 0) + (j < last ? h[j] : 0)) / 2;
                electrode.Evaluate(e[j], out double current, out double slope);
                residual[j] -= width * current;
                diagonal[j] += width * slope;
            }
        }

        double sum = 0;
        for (int j = 0; j < count; j++)
        {
            sum += residual[j] * residual[j];
        }

        return sum;
    }
}
