namespace SacrificialTape.Tests.Surfaces;

/// <summary>
/// Area by Pappus: the circle that each piece of a profile runs through, times the piece. The profile's slope is taken by
/// differences, so that nothing but its points goes in.
/// </summary>
internal static class SurfaceOfRevolution
{
    /// <summary>Area of the profile (radius, height) over t from 0 to 1, by cones between points, twice refined.</summary>
    internal static double Area(Func<double, double> radius, Func<double, double> height, int pieces = 1024)
    {
        double coarse = Cones(radius, height, pieces);
        double middle = Cones(radius, height, 2 * pieces);
        double fine = Cones(radius, height, 4 * pieces);
        double first = middle + ((middle - coarse) / 3);
        double second = fine + ((fine - middle) / 3);
        return second + ((second - first) / 15);
    }

    /// <summary>Integral over 0 to 1 by the tanh-sinh rule.</summary>
    internal static double Integral(Func<double, double> function)
    {
        const double Step = 1.0 / 128;
        double sum = 0;
        for (int i = -600; i <= 600; i++)
        {
            double u = Math.PI / 2 * Math.Sinh(i * Step);
            double weight = Math.PI / 4 * Math.Cosh(i * Step) / Math.Pow(Math.Cosh(u), 2);
            if (weight > 1e-30)
            {
                sum += weight * function(1 / (1 + Math.Exp(-2 * u)));
            }
        }

        return sum * Step;
    }

    private static double Cones(Func<double, double> radius, Func<double, double> height, int pieces)
    {
        double sum = 0;
        for (int i = 0; i < pieces; i++)
        {
            double from = (double)i / pieces;
            double to = (i + 1.0) / pieces;
            sum += Math.PI * (radius(from) + radius(to)) * double.Hypot(radius(to) - radius(from), height(to) - height(from));
        }

        return sum;
    }
}
