using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Wall and area of reducers, in doubles.</summary>
internal static class ReducerKernel
{
    private const int FirstStations = 32;
    private const int MostStations = 1 << 20;
    private const double Standstill = 1e-13;

    /// <summary>s = sqrt(H^2 + ((D1 - D2) / 2)^2).</summary>
    internal static double SlantMm<TSteps>(double largeMm, double smallMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double slant = double.Hypot(lengthMm, (largeMm - smallMm) / 2);
        if (TSteps.Records)
        {
            steps.Add(ReducerFormulas.Slant, [lengthMm, largeMm, smallMm], slant);
        }

        return slant;
    }

    /// <summary>A = pi (r1 + r2) s: equal ends give the cylinder.</summary>
    internal static double ConcentricSquareMeters<TSteps>(double largeMm, double smallMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double slant = SlantMm(largeMm, smallMm, lengthMm, steps);
        double area = Math.PI * (largeMm + smallMm) / 2 * slant / 1e6;
        if (TSteps.Records)
        {
            steps.Add(ReducerFormulas.ConcentricArea, [largeMm, smallMm, slant], area);
        }

        return area;
    }

    /// <summary>The side opposite the straight one.</summary>
    internal static double SlopingSideMm<TSteps>(double largeMm, double smallMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double side = double.Hypot(lengthMm, largeMm - smallMm);
        if (TSteps.Records)
        {
            steps.Add(ReducerFormulas.SlopingSide, [lengthMm, largeMm, smallMm], side);
        }

        return side;
    }

    /// <summary>The line that joins like points of both ends.</summary>
    internal static double GeneratorMm<TSteps>(double largeMm, double smallMm, double lengthMm, double degrees, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double generator = double.Hypot(lengthMm, (largeMm - smallMm) * Math.Sin(degrees * Math.PI / 360));
        if (TSteps.Records)
        {
            steps.Add(ReducerFormulas.Generator, [lengthMm, largeMm, smallMm, degrees], generator);
        }

        return generator;
    }

    /// <summary>Area between two generators, angles in radians from the straight side.</summary>
    internal static double SectorMm2(double largeMm, double smallMm, double lengthMm, double from, double to) =>
        (largeMm + smallMm) / 4 * IntegralKernel.Of(
            t => double.Hypot(lengthMm, (largeMm - smallMm) / 2 * (1 - Math.Cos(t))), from, to);

    /// <summary>
    /// A = pi (r1 + r2) times the mean of sqrt(H^2 + (r1 - r2)^2 (1 + cos t)^2) over the circle. The integrand is smooth
    /// and periodic, so that even stations gain digits in proportion to their number; they are doubled until the mean
    /// stands still to 1e-13 of itself, and the doubled one has about twice the digits.
    /// </summary>
    internal static double EccentricSquareMeters<TSteps>(double largeMm, double smallMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double difference = (largeMm - smallMm) / 2;
        double sum = 0;
        for (int i = 0; i < FirstStations; i++)
        {
            sum += Slant(difference, lengthMm, (double)i / FirstStations);
        }

        int stations = FirstStations;
        double before;
        double mean = sum / stations;
        do
        {
            if (stations >= MostStations)
            {
                throw new InvalidOperationException("The mean slant of the reducer did not settle; no accepted dimension is known to do this.");
            }

            before = mean;
            for (int i = 0; i < stations; i++)
            {
                sum += Slant(difference, lengthMm, (i + 0.5) / stations);
            }

            stations *= 2;
            mean = sum / stations;
        }
        while (Math.Abs(mean - before) > Standstill * mean);

        double area = Math.PI * (largeMm + smallMm) / 2 * mean / 1e6;
        if (TSteps.Records)
        {
            _ = SlopingSideMm(largeMm, smallMm, lengthMm, steps);
            steps.Add(ReducerFormulas.MeanSlant, [sum, stations], mean);
            steps.Add(ReducerFormulas.EccentricArea, [largeMm, smallMm, mean], area);
        }

        return area;
    }

    private static double Slant(double differenceMm, double lengthMm, double turn) =>
        double.Hypot(lengthMm, differenceMm * (1 + Math.Cos(2 * Math.PI * turn)));
}
