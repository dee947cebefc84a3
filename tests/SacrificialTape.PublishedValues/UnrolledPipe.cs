namespace SacrificialTape.PublishedValues;

/// <summary>
/// A spiral measured rather than solved: chords along the helix in space, closest points between neighbouring edges on
/// the unrolled pipe, and a search for the advance that gives a stated lap. No sine or cosine of the spiral's angle is
/// used to find a length.
/// </summary>
internal static class UnrolledPipe
{
    /// <summary>
    /// Length of one turn: straight chords between points of the helix in space. Halving the chords quarters what they
    /// miss, so one and four thirds of the difference takes most of it away.
    /// </summary>
    internal static double TurnByChords(double diameter, double advance)
    {
        double coarse = Chords(diameter, advance, 20_000);
        double fine = Chords(diameter, advance, 40_000);
        return fine + ((fine - coarse) / 3);
    }

    /// <summary>
    /// Shortest distance from a point on the edge of one turn to the edge of the next, found by trying places along it:
    /// the advance across the strip.
    /// </summary>
    internal static double BetweenTurns(double diameter, double advance)
    {
        double round = Math.PI * diameter;
        double low = -round - advance;
        double high = round + advance;
        for (int i = 0; i < 200; i++)
        {
            double a = low + ((high - low) / 3);
            double b = high - ((high - low) / 3);
            if (Away(a) < Away(b))
            {
                high = b;
            }
            else
            {
                low = a;
            }
        }

        return Away((low + high) / 2);

        // The point lies at (0, 0); the next edge runs through (0, advance) and climbs one advance a turn.
        double Away(double x)
        {
            double z = advance + (x * advance / round);
            return Math.Sqrt((x * x) + (z * z));
        }
    }

    /// <summary>How far apart along the pipe two edges of the same slope lie that are a strip width apart across.</summary>
    internal static double WidthAlongPipe(double diameter, double advance, double width)
    {
        // Distance across grows in proportion to distance along; one measured pair gives the rest.
        return width * advance / BetweenTurns(diameter, advance);
    }

    /// <summary>The advance at which a measured quantity, growing with it, takes a value; by halving.</summary>
    internal static double AdvanceWhere(Func<double, double> measured, double value, double low, double high)
    {
        for (int i = 0; i < 200; i++)
        {
            double middle = (low + high) / 2;
            if (measured(middle) < value)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low + high) / 2;
    }

    /// <summary>Angle between helix and circumference in degrees: once round over the turn walked is its cosine.</summary>
    internal static double AngleByChords(double diameter, double advance) =>
        Math.Acos(Math.PI * diameter / TurnByChords(diameter, advance)) * 180 / Math.PI;

    private static double Chords(double diameter, double advance, int count)
    {
        double radius = diameter / 2;
        double length = 0;
        (double x, double y, double z) = (radius, 0.0, 0.0);
        for (int i = 1; i <= count; i++)
        {
            double turn = 2 * Math.PI * i / count;
            (double nextX, double nextY, double nextZ) =
                (radius * Math.Cos(turn), radius * Math.Sin(turn), advance * i / count);
            double dx = nextX - x;
            double dy = nextY - y;
            double dz = nextZ - z;
            length += Math.Sqrt((dx * dx) + (dy * dy) + (dz * dz));
            (x, y, z) = (nextX, nextY, nextZ);
        }

        return length;
    }
}
