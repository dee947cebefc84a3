using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>Rings round the axis, in doubles (mm). What follows the surface keeps each line of a ring on one circle.</summary>
internal static class LatitudeRingKernel
{
    private const int MostRings = 100_000;

    /// <summary>Each ring of a cone or dish is a strip of its own length, so that there may not be too many of them.</summary>
    internal static int Whole(double count, double leastLap) => count <= MostRings
        ? (int)count
        : throw new ArgumentOutOfRangeException(nameof(leastLap), string.Create(
            CultureInfo.InvariantCulture, $"A lap of {leastLap:0.######} mm takes {count:0} rings, more than the {MostRings} that are listed: the lap must be smaller or the strip wider."));

    /// <summary>The meridian that the rings cover.</summary>
    internal static double SpanMm<TSteps>(double meridianMm, double openingMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double span = meridianMm - openingMm;
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.RingSpan, [meridianMm, openingMm], span);
        }

        return span;
    }

    internal static double LengthMm<TSteps>(double wideMm, double endLapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double length = (2 * Math.PI * wideMm) + endLapMm;
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.RingLength, [wideMm, endLapMm], length);
        }

        return length;
    }

    internal static double Pucker<TSteps>(double crownEdgeMm, double middleMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strain = Math.Max(0, 1 - (crownEdgeMm / middleMm));
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.RingPucker, [crownEdgeMm, middleMm], strain);
        }

        return strain;
    }

    internal static double Stretch<TSteps>(double lowEdgeMm, double middleMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strain = Math.Max(0, (lowEdgeMm / middleMm) - 1);
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.RingStretch, [lowEdgeMm, middleMm], strain);
        }

        return strain;
    }

    /// <summary>
    /// The widest ring about a place that keeps within both limits, by bisection, for the radius never grows toward the
    /// crown; infinite when one from edge to crown does.
    /// </summary>
    internal static double WidestMm(Meridian meridian, double middleMm, double pucker, double stretch)
    {
        double middle = meridian.At(middleMm).RadiusMm;
        bool Within(double width)
        {
            double crown = meridian.At(Math.Min(meridian.LengthMm, middleMm + (width / 2))).RadiusMm;
            double low = meridian.At(Math.Max(0, middleMm - (width / 2))).RadiusMm;
            return Pucker(crown, middle, default(NoSteps)) <= pucker && Stretch(low, middle, default(NoSteps)) <= stretch;
        }

        double narrow = 0;
        double wide = 2 * meridian.LengthMm;
        if (Within(wide))
        {
            return double.PositiveInfinity;
        }

        for (int i = 0; i < 100 && wide - narrow > 1e-13 * wide; i++)
        {
            double between = (narrow + wide) / 2;
            (narrow, wide) = Within(between) ? (between, wide) : (narrow, between);
        }

        return narrow;
    }
}
