namespace SacrificialTape.Tests.Wrapping;

/// <summary>
/// The pipe cut open and laid flat: x runs round it and closes on itself after a circumference, z runs along it. Strips
/// are rectangles drawn on it, in plain coordinates and without any formula of the library: a strip has its own axes, a
/// along it and b across it, turned by the angle whose tangent is advance over circumference.
/// </summary>
internal sealed class UnrolledPipe(double circumference, double length)
{
    // Strips are counted in whole micrometres: edges are that exact and no better.
    private const double Edge = 2e-3;

    private readonly List<Rectangle> rectangles = [];

    internal double Circumference => circumference;

    internal double Length => length;

    /// <summary>A rectangle with one corner at (x, z), turned so that it climbs by a circumference's advance each turn.</summary>
    internal void Wind(double x, double z, double stripLength, double width, double advance, Func<int, double>? shift = null)
    {
        double slant = Math.Sqrt((circumference * circumference) + (advance * advance));
        this.rectangles.Add(new Rectangle(x, z, circumference / slant, advance / slant, stripLength, width, shift));
    }

    /// <summary>A ring between two heights.</summary>
    internal void Ring(double z, double width) => this.Wind(0, z, circumference, width, 0);

    /// <summary>A strip along the pipe, from one end to the other or on a part of it.</summary>
    internal void Along(double x, double width, double from = 0, double? stripLength = null) =>
        this.rectangles.Add(new Rectangle(x + width, from, 0, 1, stripLength ?? length, width, null));

    /// <summary>How many strips lie over a spot, edges counted in (more) or out (fewer).</summary>
    internal int Over(double x, double z, bool edgesIn)
    {
        double edge = edgesIn ? Edge : -Edge;
        int count = 0;
        foreach (Rectangle strip in this.rectangles)
        {
            count += strip.Over(x, z, circumference, edge);
        }

        return count;
    }

    private sealed record Rectangle(double X, double Z, double Cos, double Sin, double StripLength, double Width, Func<int, double>? Shift)
    {
        internal int Over(double x, double z, double circumference, double edge)
        {
            // The spot shows once for each turn round the pipe; a ring is met in one turn only.
            bool level = this.Sin < 1e-12;
            double reach = this.StripLength + this.Width + circumference;
            int turns = level ? 0 : (int)Math.Ceiling(reach / circumference) + 1;
            int from = 0;
            int to = turns;
            if (level)
            {
                double b = z - this.Z;
                return b >= -edge && b <= this.Width + edge ? 1 : 0;
            }

            if (this.Cos > 1e-12)
            {
                // Only turns whose band can reach the spot: b = cos (z - Z) - sin (x + k C - X) within the width.
                double first = (((this.Cos * (z - this.Z)) - this.Width) / this.Sin) - x + this.X;
                double last = (this.Cos * (z - this.Z) / this.Sin) - x + this.X;
                from = (int)Math.Floor(first / circumference) - 2;
                to = (int)Math.Ceiling(last / circumference) + 2;
            }
            else
            {
                from = -turns;
            }

            int count = 0;
            for (int k = from; k <= to; k++)
            {
                double dx = x + (k * circumference) - this.X;
                double dz = z - this.Z;
                double a = (dx * this.Cos) + (dz * this.Sin);
                double b = (dz * this.Cos) - (dx * this.Sin);
                double shift = this.Shift?.Invoke(k) ?? 0;
                if (a >= -edge && a <= this.StripLength + edge && b >= shift - edge && b <= this.Width + shift + edge)
                {
                    count++;
                }
            }

            return count;
        }
    }
}
