namespace SacrificialTape.Tests.Galvanic;

/// <summary>
/// The same balance by another way: from the far end of the steel, where no current flows, by Runge-Kutta of order four
/// through steel and zinc; the potential there is bisected until no current leaves by the end of the zinc either.
/// </summary>
internal static class Shooting
{
    private const int Steps = 4000;

    /// <summary>Potentials in V SCE: far end of the steel, edge, far end of the zinc.</summary>
    internal static (double FarSteel, double Edge, double FarZinc) Solve(
        double spread, Func<double, double> zinc, double zincMm, Func<double, double> steel, double steelMm, double low, double high)
    {
        for (int i = 0; i < 200 && high - low > 1e-16; i++)
        {
            double middle = (low + high) / 2;
            (_, double flow, _) = Run(spread, zinc, zincMm, steel, steelMm, middle);

            // Starting too high up, the steel does not take enough, and the potential still rises at the end of the zinc.
            (low, high) = flow > 0 ? (low, middle) : (middle, high);
        }

        (double edge, _, double far) = Run(spread, zinc, zincMm, steel, steelMm, (low + high) / 2);
        return ((low + high) / 2, edge, far);
    }

    private static (double Edge, double Flow, double End) Run(
        double spread, Func<double, double> zinc, double zincMm, Func<double, double> steel, double steelMm, double start)
    {
        (double edge, double slope) = March(spread, steel, steelMm, start, 0);
        (double end, double last) = March(spread, zinc, zincMm, edge, slope);
        return (edge, double.IsNaN(last) ? -1 : last, end);
    }

    // E'' = i(E)/(sigma d), to the left; once it has run away up or down, only its direction counts.
    private static (double Value, double Slope) March(double spread, Func<double, double> current, double lengthMm, double value, double slope)
    {
        double h = lengthMm / Steps;
        double F(double e) => current(e) / spread;
        for (int i = 0; i < Steps; i++)
        {
            if (Math.Abs(value) > 3)
            {
                return (value, Math.Sign(value));
            }

            double k1 = slope;
            double l1 = F(value);
            double k2 = slope + (h * l1 / 2);
            double l2 = F(value + (h * k1 / 2));
            double k3 = slope + (h * l2 / 2);
            double l3 = F(value + (h * k2 / 2));
            double k4 = slope + (h * l3);
            double l4 = F(value + (h * k3));
            value += h * (k1 + (2 * k2) + (2 * k3) + k4) / 6;
            slope += h * (l1 + (2 * l2) + (2 * l3) + l4) / 6;
        }

        return (value, slope);
    }
}
