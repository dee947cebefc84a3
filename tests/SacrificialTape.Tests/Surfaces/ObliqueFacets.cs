namespace SacrificialTape.Tests.Surfaces;

/// <summary>
/// The wall between two circles whose centres are offset, as flat triangles between points on both rims: lengths and
/// cross products of corners, and no calculus. Facets of a ruled, developable surface tend to its area.
/// </summary>
internal static class ObliqueFacets
{
    /// <summary>Twice refined; the error is what the last refinement changed, as a share.</summary>
    internal static double Limit(double lowerRadius, double upperRadius, double offset, double height, out double error)
    {
        double coarse = Area(lowerRadius, upperRadius, offset, height, 4096);
        double middle = Area(lowerRadius, upperRadius, offset, height, 8192);
        double fine = Area(lowerRadius, upperRadius, offset, height, 16384);
        double first = middle + ((middle - coarse) / 3);
        double second = fine + ((fine - middle) / 3);
        error = Math.Abs(second - first) / second;
        return second;
    }

    private static double Area(double lower, double upper, double offset, double height, int facets)
    {
        double sum = 0;
        for (int i = 0; i < facets; i++)
        {
            double from = 2 * Math.PI * i / facets;
            double to = 2 * Math.PI * (i + 1) / facets;
            (double, double, double) a = (lower * Math.Cos(from), lower * Math.Sin(from), 0);
            (double, double, double) b = (lower * Math.Cos(to), lower * Math.Sin(to), 0);
            (double, double, double) c = (offset + (upper * Math.Cos(from)), upper * Math.Sin(from), height);
            (double, double, double) d = (offset + (upper * Math.Cos(to)), upper * Math.Sin(to), height);
            sum += Triangle(a, b, c) + Triangle(b, d, c);
        }

        return sum;
    }

    private static double Triangle((double X, double Y, double Z) a, (double X, double Y, double Z) b, (double X, double Y, double Z) c)
    {
        (double ux, double uy, double uz) = (b.X - a.X, b.Y - a.Y, b.Z - a.Z);
        (double vx, double vy, double vz) = (c.X - a.X, c.Y - a.Y, c.Z - a.Z);
        double x = (uy * vz) - (uz * vy);
        double y = (uz * vx) - (ux * vz);
        double z = (ux * vy) - (uy * vx);
        return Math.Sqrt((x * x) + (y * y) + (z * z)) / 2;
    }
}
