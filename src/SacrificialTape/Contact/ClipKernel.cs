namespace SacrificialTape.Contact;

/// <summary>Areas that flat shapes share: convex polygons cut by half planes, and discs over polygons. Doubles in mm.</summary>
internal static class ClipKernel
{
    /// <summary>Corners of a polygon at most: four of a strip, and one more for every half plane that cuts it.</summary>
    internal const int MostCorners = 16;

    /// <summary>Keeps what lies where nx x + ny y is at most c; the corners stand in place, their number is given back.</summary>
    internal static int Cut(Span<(double X, double Y)> corners, int count, double nx, double ny, double c)
    {
        if (count == 0)
        {
            return 0;
        }

        Span<(double X, double Y)> given = stackalloc (double X, double Y)[MostCorners];
        corners[..count].CopyTo(given);
        int kept = 0;
        (double X, double Y) last = given[count - 1];
        double lastOver = (nx * last.X) + (ny * last.Y) - c;
        for (int i = 0; i < count; i++)
        {
            (double X, double Y) next = given[i];
            double over = (nx * next.X) + (ny * next.Y) - c;
            if (lastOver < 0 != over < 0 && lastOver != 0 && over != 0)
            {
                double share = lastOver / (lastOver - over);
                corners[kept++] = (last.X + (share * (next.X - last.X)), last.Y + (share * (next.Y - last.Y)));
            }

            if (over <= 0)
            {
                corners[kept++] = next;
            }

            (last, lastOver) = (next, over);
        }

        return kept;
    }

    /// <summary>Area of a polygon whose corners run one way round.</summary>
    internal static double Area(ReadOnlySpan<(double X, double Y)> corners)
    {
        double twice = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            (double X, double Y) a = corners[i];
            (double X, double Y) b = corners[(i + 1) % corners.Length];
            twice += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(twice) / 2;
    }

    /// <summary>Area that a polygon shares with an ellipse about a place: with a disc after both are scaled.</summary>
    internal static double AreaInEllipse(Span<(double X, double Y)> corners, double x, double y, double halfX, double halfY)
    {
        for (int i = 0; i < corners.Length; i++)
        {
            corners[i] = ((corners[i].X - x) / halfX, (corners[i].Y - y) / halfY);
        }

        double area = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            area += Sector(corners[i], corners[(i + 1) % corners.Length]);
        }

        return Math.Abs(area) * halfX * halfY;
    }

    // Signed area that the triangle of the middle and one side shares with the disc of radius 1.
    private static double Sector((double X, double Y) a, (double X, double Y) b)
    {
        double dx = b.X - a.X;
        double dy = b.Y - a.Y;
        double square = (dx * dx) + (dy * dy);
        if (square == 0)
        {
            return 0;
        }

        double along = (a.X * dx) + (a.Y * dy);
        double off = (a.X * a.X) + (a.Y * a.Y) - 1;
        double root = (along * along) - (square * off);
        if (root <= 0)
        {
            return Turn(a, b) / 2;
        }

        double half = Math.Sqrt(root);
        double enter = Math.Clamp((-along - half) / square, 0, 1);
        double leave = Math.Clamp((-along + half) / square, 0, 1);
        (double X, double Y) p = (a.X + (enter * dx), a.Y + (enter * dy));
        (double X, double Y) q = (a.X + (leave * dx), a.Y + (leave * dy));
        return (Turn(a, p) + ((p.X * q.Y) - (q.X * p.Y)) + Turn(q, b)) / 2;
    }

    private static double Turn((double X, double Y) a, (double X, double Y) b) =>
        Math.Atan2((a.X * b.Y) - (b.X * a.Y), (a.X * b.X) + (a.Y * b.Y));
}
