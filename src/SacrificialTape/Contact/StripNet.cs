using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;

namespace SacrificialTape.Contact;

/// <summary>
/// The net of strips, laps and windows: each strip cut into cells along its length, a node in the middle of each. Cells of
/// a strip are joined through the foil, cells that lap through the adhesive, cells over windows to the steel.
/// </summary>
internal sealed class StripNet
{
    private readonly List<NetLink> links = [];
    private readonly StripPiece[] cells;
    private readonly int[] stripOf;
    private readonly double[] toSteel;
    private readonly double[] covered;

    internal StripNet(ValueList<PlacedStrip> strips, WindowLayout layout, bool lapsConduct, double sheetOhm, double jointOhmCm2, double cellMm)
    {
        UnrolledSurface surface = layout.Surface;
        var found = new List<StripPiece>();
        var owners = new List<int>();
        for (int strip = 0; strip < strips.Count; strip++)
        {
            this.AddCells(strips[strip], strip, surface, sheetOhm, cellMm, found, owners);
        }

        this.cells = [.. found];
        this.stripOf = [.. owners];
        this.toSteel = new double[this.cells.Length];
        var pieces = new StripPieces(this.cells, this.cells.Length, surface);
        this.covered = this.CoveredMm2(pieces);
        if (lapsConduct)
        {
            this.JoinLaps(pieces, jointOhmCm2);
        }

        this.JoinSteel(pieces, layout, strips, sheetOhm, jointOhmCm2);
    }

    internal int Nodes => this.cells.Length;

    internal int StripOf(int cell) => this.stripOf[cell];

    /// <summary>
    /// Voltages of the cells that reach the steel, others not a number; current in A from the covered area of the first pass.
    /// </summary>
    internal double[] Solve(double amperesPerM2, out double missed, out double amperes)
    {
        var sets = new StripSets(this.cells.Length);
        foreach (NetLink link in this.links)
        {
            sets.Join(link.One, link.Other);
        }

        var reach = new bool[this.cells.Length];
        for (int i = 0; i < reach.Length; i++)
        {
            reach[sets.RootOf(i)] |= this.toSteel[i] > 0;
        }

        int[] kept = [.. Enumerable.Range(0, this.cells.Length).Where(i => reach[sets.RootOf(i)])];
        double[] all = new double[this.cells.Length];
        Array.Fill(all, double.NaN);
        missed = 0;
        amperes = 0;
        if (kept.Length == 0)
        {
            return all;
        }

        var index = new int[this.cells.Length];
        for (int i = 0; i < kept.Length; i++)
        {
            index[kept[i]] = i;
        }

        double[] currents = [.. kept.Select(i => this.covered[i] / 1e6 * amperesPerM2)];
        var voltages = new double[kept.Length];
        missed = SkylineKernel.Solve(
            [.. kept.Select(i => this.toSteel[i])],
            [.. this.links.Where(link => reach[sets.RootOf(link.One)]).Select(link => new NetLink(index[link.One], index[link.Other], link.Siemens))],
            currents,
            voltages);
        for (int i = 0; i < kept.Length; i++)
        {
            all[kept[i]] = voltages[i];
        }

        amperes = currents.Sum();
        return all;
    }

    // Each cell sends the current of what no strip below it covers, so that laps count once.
    private double[] CoveredMm2(StripPieces pieces)
    {
        var alone = new StripSets(this.cells.Length);
        var areas = new double[this.cells.Length];
        var near = new List<int>();
        var below = new List<int>();
        for (int cell = 0; cell < areas.Length; cell++)
        {
            StripPiece piece = this.cells[cell];
            if (!piece.OnSteel)
            {
                continue;
            }

            var whole = new BareSpot(
                (piece.LowX + piece.HighX) / 2, (piece.LowY + piece.HighY) / 2, (piece.HighX - piece.LowX) / 2, (piece.HighY - piece.LowY) / 2, false, 1);
            SteelContactKernel.Near(pieces, whole, 0, near);
            this.Below(cell, near, below);
            areas[cell] = SteelContactKernel.TouchedMm2(pieces, alone, cell, whole, below);
        }

        return areas;
    }

    // Of strips that lap the one with the lower number is taken to lie below; so is the beginning of a ring under its end.
    private void Below(int cell, List<int> near, List<int> below)
    {
        below.Clear();
        foreach (int other in near)
        {
            if (other == cell || this.stripOf[other] < this.stripOf[cell]
                || (this.stripOf[other] == this.stripOf[cell] && other < cell && this.cells[cell].Slope == 0))
            {
                below.Add(other);
            }
        }
    }

    private void AddCells(
        PlacedStrip place, int strip, UnrolledSurface surface, double sheetOhm, double cellMm, List<StripPiece> found, List<int> owners)
    {
        double slope = place.LeanMm / place.AroundMm;
        double cosine = 1 / Math.Sqrt(1 + (slope * slope));
        double run = place.RunsAround ? place.AroundMm / cosine : place.AlongMm;
        int count = (int)AcceptedRange.Between(1, 200_000, "cells").Noting("take longer cells").Check(Math.Ceiling(run / cellMm), "cell");
        double width = place.RunsAround ? place.AlongMm * cosine : place.AroundMm;
        double siemens = width / (sheetOhm * (run / count));
        int last = -1;
        for (int i = 0; i < count; i++)
        {
            if (Cell(place, strip, surface, slope, i, count, found.Count) is not { } cell)
            {
                last = -1;
                continue;
            }

            found.Add(cell);
            owners.Add(strip);
            if (last >= 0)
            {
                this.links.Add(new NetLink(last, found.Count - 1, siemens));
            }

            last = found.Count - 1;
        }
    }

    private static StripPiece? Cell(PlacedStrip place, int strip, UnrolledSurface surface, double slope, int i, int count, int number)
    {
        double girth = surface.GirthMm;
        double from = place.FromAroundMm;
        double around = place.AroundMm;
        double x = place.FromAlongMm;
        double along = place.AlongMm;
        bool onSteel = place.Pass == 1;
        if (place.RunsAround)
        {
            around /= count;
            from += i * around;
            x += slope * i * around;
            onSteel &= slope != 0 || (i * around) < girth * (1 - WithAllowance.RelativeAllowance);
        }
        else
        {
            along /= count;
            x += i * along;
        }

        double low = surface.IsClosed ? BareSpot.Turned(from, girth) : Math.Max(0, from);
        double high = surface.IsClosed ? low + Math.Min(around, girth) : Math.Min(girth, from + around);
        double own = slope == 0 ? along : Math.Min(along, Math.Abs(slope) * girth);
        var piece = new StripPiece(number, x, along, own, low, high, slope, onSteel);
        return high > low && piece.HighX > 0 && piece.LowX < surface.LengthMm ? piece : null;
    }

    private void JoinLaps(StripPieces pieces, double jointOhmCm2)
    {
        UnrolledSurface surface = pieces.Surface;
        var seen = new HashSet<(int, int)>();
        for (int box = 0; box < pieces.Grid.CellCount; box++)
        {
            ReadOnlySpan<int> members = pieces.Grid.In(box);
            for (int i = 1; i < members.Length; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    (int low, int high) = (Math.Min(members[i], members[j]), Math.Max(members[i], members[j]));
                    if (!seen.Add((low, high)))
                    {
                        continue;
                    }

                    double mm2 = this.cells[low].SharedMm2(this.cells[high], surface.LengthMm, surface.GirthMm, surface.IsClosed);

                    // Neighbours along a strip share an edge, which rounding may make a sliver.
                    if (mm2 > 1e-6 && !(this.stripOf[low] == this.stripOf[high] && high == low + 1))
                    {
                        this.links.Add(new NetLink(low, high, mm2 / 100 / jointOhmCm2));
                    }
                }
            }
        }
    }

    private void JoinSteel(StripPieces pieces, WindowLayout layout, ValueList<PlacedStrip> strips, double sheetOhm, double jointOhmCm2)
    {
        var alone = new StripSets(this.cells.Length);
        var near = new List<int>();
        var below = new List<int>();
        double widest = strips.Count == 0 ? 0 : strips.Max(static strip => strip.AlongMm);
        foreach (BareSpot spot in layout.Spots)
        {
            SteelContactKernel.Near(pieces, spot, widest, near);
            var touched = new List<(int Cell, double Mm2)>();
            foreach (int cell in near)
            {
                this.Below(cell, near, below);
                double mm2 = SteelContactKernel.TouchedMm2(pieces, alone, cell, spot, below);
                if (mm2 > 0)
                {
                    touched.Add((cell, mm2));
                }
            }

            foreach (IGrouping<int, (int Cell, double Mm2)> strip in touched.GroupBy(one => this.stripOf[one.Cell]))
            {
                double all = strip.Sum(static one => one.Mm2);
                PlacedStrip place = strips[strip.Key];

                // A window as wide as its strip takes current over the whole width: nothing has to spread.
                double disc = Math.Max(Math.Sqrt(all / Math.PI), place.RunsAround ? spot.HalfX : spot.HalfY);
                double width = place.RunsAround ? place.AlongMm / Math.Sqrt(1 + Math.Pow(place.LeanMm / place.AroundMm, 2)) : place.AroundMm;
                double spread = width > 2 * disc ? VoltageKernel.DiscToRingOhm(sheetOhm, width / 2, disc, default(Provenance.NoSteps)) : 0;
                foreach ((int cell, double mm2) in strip)
                {
                    this.toSteel[cell] += mm2 / 100 / (jointOhmCm2 + (spread * all / 100));
                }
            }
        }
    }
}
