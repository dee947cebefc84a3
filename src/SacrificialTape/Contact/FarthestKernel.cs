using SacrificialTape.Provenance;

namespace SacrificialTape.Contact;

/// <summary>
/// The point of a surface that lies farthest from every window, by branch and bound: a cell whose middle is d from the
/// nearest window and whose corner is c from its middle holds no point farther than d + c. Doubles in mm.
/// </summary>
internal static class FarthestKernel
{
    /// <summary>sqrt((g dx)^2 + dy^2).</summary>
    internal static double DistanceMm<TSteps>(double alongMm, double factor, double aroundMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double distance = Math.Sqrt((factor * alongMm * factor * alongMm) + (aroundMm * aroundMm));
        if (TSteps.Records)
        {
            steps.Add(ContactFormulas.Distance, [factor, alongMm, aroundMm], distance);
        }

        return distance;
    }

    /// <summary>No point lies farther than <see cref="Farthest.AtMostMm"/>, and one lies at <see cref="Farthest.FoundMm"/>.</summary>
    internal static Farthest Search(ReadOnlySpan<BareSpot> spots, UnrolledSurface surface, double toleranceMm)
    {
        double girth = surface.GirthMm;
        double length = surface.LengthMm;
        var all = new List<Target>();
        foreach (ref readonly BareSpot spot in spots)
        {
            for (int turn = surface.IsClosed ? -1 : 0; turn <= (surface.IsClosed ? 1 : 0); turn++)
            {
                all.Add(new(spot.X, spot.Y + (turn * girth), spot.HalfX, spot.HalfY, spot.IsRound));
            }
        }

        var open = new PriorityQueue<Cell, double>();

        // One for all cells: none has more windows than the first.
        double[] lower = new double[all.Count];
        Farthest best = new(-1, -1, 0, 0, 0, 0, 1);
        Push(new Cell(length / 2, girth / 2, length / 2, girth / 2, [.. all]));
        while (open.TryPeek(out Cell cell, out double minusMost))
        {
            if (-minusMost <= best.FoundMm + toleranceMm)
            {
                break;
            }

            _ = open.Dequeue();
            bool splitAlong = cell.HalfX >= cell.HalfY;
            double quarterX = splitAlong ? cell.HalfX / 2 : 0;
            double quarterY = splitAlong ? 0 : cell.HalfY / 2;
            double halfX = splitAlong ? cell.HalfX / 2 : cell.HalfX;
            double halfY = splitAlong ? cell.HalfY : cell.HalfY / 2;
            Push(new Cell(cell.X - quarterX, cell.Y - quarterY, halfX, halfY, cell.Targets));
            Push(new Cell(cell.X + quarterX, cell.Y + quarterY, halfX, halfY, cell.Targets));
        }

        double most = open.TryPeek(out _, out double left) ? Math.Max(best.FoundMm, -left) : best.FoundMm;
        return best with { AtMostMm = most };

        void Push(Cell cell)
        {
            double corner = Math.Sqrt((cell.HalfX * cell.HalfX) + (cell.HalfY * cell.HalfY));
            double nearest = double.MaxValue;
            Farthest here = default;
            for (int i = 0; i < cell.Targets.Length; i++)
            {
                (double dx, double dy) = cell.Targets[i].From(cell.X, cell.Y);
                double flat = Math.Sqrt((dx * dx) + (dy * dy));
                lower[i] = surface.IsBend ? Math.Abs(dy) : flat;
                double factor = surface.MeanSquareFactor(cell.Y, cell.Y - dy);
                double distance = DistanceMm(dx, factor, dy, default(NoSteps));
                if (distance < nearest)
                {
                    nearest = distance;
                    here = new(distance, distance, cell.X, cell.Y, Math.Abs(dx), Math.Abs(dy), factor);
                }
            }

            if (nearest > best.FoundMm)
            {
                best = here;
            }

            // Only windows that may be nearest to some point of the cell go on to its parts.
            double within = nearest + (2 * corner);
            var kept = new List<Target>();
            for (int i = 0; i < cell.Targets.Length; i++)
            {
                if (lower[i] <= within)
                {
                    kept.Add(cell.Targets[i]);
                }
            }

            open.Enqueue(cell with { Targets = kept.Count == cell.Targets.Length ? cell.Targets : [.. kept] }, -(nearest + corner));
        }
    }

    private readonly record struct Target(double X, double Y, double HalfX, double HalfY, bool IsRound)
    {
        /// <summary>How far away the nearest point of the window lies along and around.</summary>
        internal (double DX, double DY) From(double x, double y)
        {
            double dx = x - this.X;
            double dy = y - this.Y;
            if (!this.IsRound)
            {
                return (dx - Math.Clamp(dx, -this.HalfX, this.HalfX), dy - Math.Clamp(dy, -this.HalfY, this.HalfY));
            }

            // Along the line to the middle: exact for a disc, and for an ellipse never too near.
            double share = Math.Sqrt((dx / this.HalfX * dx / this.HalfX) + (dy / this.HalfY * dy / this.HalfY));
            return share <= 1 ? (0, 0) : (dx * (1 - (1 / share)), dy * (1 - (1 / share)));
        }
    }

    private readonly record struct Cell(double X, double Y, double HalfX, double HalfY, Target[] Targets);
}
