using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>
/// A strip round a bend whose bend angle goes in proportion to its tube angle, phi = c t, in doubles (mm, radians). The
/// torus has ds^2 = r^2 dt^2 + f^2 dphi^2 with f = R + r cos(t); t is 0 on the outside.
/// </summary>
internal static class BendSpiralKernel
{
    private const double Radian = Math.PI / 180;
    private const int FirstStations = 16;
    private const int MostStations = 1 << 20;
    private const double Standstill = 1e-13;

    internal static double Turns<TSteps>(double arcMm, double advanceMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double turns = WithAllowance.Ceiling(arcMm / advanceMm);
        if (TSteps.Records)
        {
            steps.Add(BendSpiralFormulas.TurnCount, [arcMm, advanceMm], turns);
        }

        return turns;
    }

    internal static double OutsideAdvanceMm<TSteps>(double arcMm, double turns, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double advance = arcMm / turns;
        if (TSteps.Records)
        {
            steps.Add(BendSpiralFormulas.OutsideAdvance, [arcMm, turns], advance);
        }

        return advance;
    }

    internal static double InsideAdvanceMm<TSteps>(double outsideMm, double bendMm, double tubeMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double advance = outsideMm * (bendMm - tubeMm) / (bendMm + tubeMm);
        if (TSteps.Records)
        {
            steps.Add(BendSpiralFormulas.InsideAdvance, [outsideMm, bendMm, tubeMm], advance);
        }

        return advance;
    }

    internal static double AngleDegrees<TSteps>(double advanceMm, double circumferenceMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double angle = Math.Atan(advanceMm / circumferenceMm) / Radian;
        if (TSteps.Records)
        {
            steps.Add(BendSpiralFormulas.OutsideAngle, [advanceMm, circumferenceMm], angle);
        }

        return angle;
    }

    internal static double LapMm<TSteps>(Formula formula, double widthMm, double advanceMm, double circumferenceMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lap = widthMm - (advanceMm * circumferenceMm / double.Hypot(circumferenceMm, advanceMm));
        if (TSteps.Records)
        {
            steps.Add(formula, [widthMm, advanceMm, circumferenceMm], lap);
        }

        return lap;
    }

    internal static double Layers<TSteps>(int passes, double widthMm, double lapMm, double wanderMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double layers = passes * WithAllowance.Floor(widthMm / (widthMm - lapMm + wanderMm));
        if (TSteps.Records)
        {
            steps.Add(BendSpiralFormulas.Layers, [passes, widthMm, lapMm, wanderMm], layers);
        }

        return layers;
    }

    internal static double Ratio<TSteps>(double outsideMm, double bendMm, double tubeMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double ratio = outsideMm / (2 * Math.PI * (bendMm + tubeMm));
        if (TSteps.Records)
        {
            steps.Add(BendSpiralFormulas.TurnRatio, [outsideMm, bendMm, tubeMm], ratio);
        }

        return ratio;
    }

    /// <summary>
    /// Length of the centre line over whole turns. Its integrand is smooth and periodic: even stations, doubled until the
    /// mean stands still, give it to the last digits.
    /// </summary>
    internal static double StripMm<TSteps>(double turns, double ratio, double bendMm, double tubeMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double Speed(double part) => double.Hypot(tubeMm, ratio * (bendMm + (tubeMm * Math.Cos(2 * Math.PI * part))));
        double sum = 0;
        for (int i = 0; i < FirstStations; i++)
        {
            sum += Speed((double)i / FirstStations);
        }

        int stations = FirstStations;
        double mean = sum / stations;
        double before;
        do
        {
            before = mean;
            for (int i = 0; i < stations; i++)
            {
                sum += Speed((i + 0.5) / stations);
            }

            stations *= 2;
            mean = sum / stations;
        }
        while (Math.Abs(mean - before) > Standstill * mean && stations < MostStations);

        double strip = 2 * Math.PI * turns * mean;
        if (TSteps.Records)
        {
            steps.Add(BendSpiralFormulas.MeanSpeed, [sum, stations], mean);
            steps.Add(BendSpiralFormulas.Strip, [turns, mean], strip);
        }

        return strip;
    }

    /// <summary>Half a strip width times the geodesic curvature, c sin(t) (2 r^2 + c^2 f^2) / (r^2 + c^2 f^2)^(3/2).</summary>
    internal static double SidewaysStrain<TSteps>(double widthMm, double ratio, double degrees, double tubeMm, double bendMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double along = ratio * (bendMm + (tubeMm * Math.Cos(degrees * Radian)));
        double square = (tubeMm * tubeMm) + (along * along);
        double strain = widthMm / 2 * ratio * Math.Sin(degrees * Radian) * ((tubeMm * tubeMm) + square) / (square * Math.Sqrt(square));
        if (TSteps.Records)
        {
            steps.Add(BendSpiralFormulas.SidewaysStrain, [widthMm, ratio, degrees, tubeMm, bendMm], strain);
        }

        return strain;
    }

    /// <summary>What the curvature cos(t) / (r f) of the surface makes of an edge: below zero on the outer half, above on the inner.</summary>
    internal static double SurfaceStrain<TSteps>(double widthMm, double degrees, double tubeMm, double bendMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double cosine = Math.Cos(degrees * Radian);
        double quarter = widthMm / 4 * Math.Sqrt(Math.Abs(cosine) / (tubeMm * (bendMm + (tubeMm * cosine))));
        double half = cosine > 0 ? Math.Sin(quarter) : Math.Sinh(quarter);
        double strain = 2 * half * half * (cosine > 0 ? -1 : 1);
        if (TSteps.Records)
        {
            steps.Add(cosine > 0 ? BendSpiralFormulas.OuterStrain : BendSpiralFormulas.InnerStrain, [widthMm, degrees, tubeMm, bendMm], strain);
        }

        return strain;
    }

    /// <summary>The most that either edge puckers (-1) or stretches (+1) anywhere; both edges meet the same, on opposite sides of the pipe.</summary>
    internal static double MostStrain<TSteps>(int sign, double widthMm, double ratio, double tubeMm, double bendMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double At(double degrees) =>
            SidewaysStrain(widthMm, ratio, degrees, tubeMm, bendMm, default(NoSteps))
            + (sign * SurfaceStrain(widthMm, degrees, tubeMm, bendMm, default(NoSteps)));
        double worst = Worst(At);
        double sideways = SidewaysStrain(widthMm, ratio, worst, tubeMm, bendMm, steps);
        double surface = SurfaceStrain(widthMm, worst, tubeMm, bendMm, steps);
        double strain = sideways + (sign * surface);
        if (TSteps.Records)
        {
            steps.Add(sign < 0 ? BendSpiralFormulas.MostPucker : BendSpiralFormulas.MostStretch, [sideways, surface], strain);
        }

        return strain;
    }

    // Tube angle of the largest value: the best of half degrees, then thirds taken off on both sides of it.
    private static double Worst(Func<double, double> strain)
    {
        double best = 0;
        double most = double.MinValue;
        for (int i = 0; i <= 360; i++)
        {
            double here = strain(i / 2.0);
            (best, most) = here > most ? (i / 2.0, here) : (best, most);
        }

        double low = Math.Max(0, best - 0.5);
        double high = Math.Min(180, best + 0.5);
        for (int i = 0; i < 60; i++)
        {
            double third = (high - low) / 3;
            if (strain(low + third) < strain(high - third))
            {
                low += third;
            }
            else
            {
                high -= third;
            }
        }

        double found = (low + high) / 2;
        return strain(found) > most ? found : best;
    }
}
