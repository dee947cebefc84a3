using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>Number and lap of gores, in doubles (mm).</summary>
internal static class GoreKernel
{
    private const int FewestPieces = 16;
    private const int MostPieces = 1024;

    /// <summary>The fewest gores that fit the strip everywhere, and their outline.</summary>
    internal static double Count<TSteps>(in RevolvedInput input, double openingMm, out GoreOutline outline, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = input.Stock.WidthMm;
        double lap = input.LeastLapMm;
        double least = Math.Max(3, SpanKernel.ClosedCount(Math.PI * input.DiameterMm, width, lap, default(NoSteps)));
        double count = least;
        while (true)
        {
            outline = Outline(input, openingMm, count);
            (double asked, GoreOutline.Station governing) = Governing(outline, width, lap);
            if (asked <= count)
            {
                if (TSteps.Records)
                {
                    double from = asked == count ? least : count;
                    double slope = governing.At.Slope;
                    double radius = governing.At.RadiusMm;
                    if (slope / radius * width < 1e-7)
                    {
                        steps.Add(RevolvedFormulas.GoreCountStraight, [from, radius, width, lap, governing.ChordMm], count);
                    }
                    else
                    {
                        steps.Add(RevolvedFormulas.GoreCount, [from, slope, radius, width, lap, governing.ChordMm], count);
                    }
                }

                return count;
            }

            _ = StripCount.Whole(asked, width, lap);
            count = asked;
        }
    }

    /// <summary>Half the gore where it is widest.</summary>
    internal static double WidestHalfMm<TSteps>(GoreOutline outline, double count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        GoreOutline.Station widest = outline.Stations.MaxBy(static one => one.HalfMm);
        if (TSteps.Records)
        {
            double slope = widest.At.Slope;
            if (slope * Math.PI / count < 1e-8)
            {
                steps.Add(RevolvedFormulas.GoreHalfStraight, [widest.At.RadiusMm, count, widest.ChordMm], widest.HalfMm);
            }
            else
            {
                steps.Add(RevolvedFormulas.GoreHalf, [widest.At.RadiusMm, slope, count, widest.ChordMm], widest.HalfMm);
            }
        }

        return widest.HalfMm;
    }

    internal static double LapMm<TSteps>(double widthMm, double halfMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lap = widthMm - (2 * halfMm);
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.GoreLap, [widthMm, halfMm], lap);
        }

        return lap;
    }

    /// <summary>The pucker where the gore's edge and the curvature between it and the low edge make it most.</summary>
    internal static double Pucker<TSteps>(Meridian meridian, GoreOutline outline, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double worstHalf = 0;
        double worstCurvature = 0;
        foreach (GoreOutline.Station station in outline.Stations)
        {
            double half = station.HalfMm + (lapMm / 2);
            double curvature = meridian.MostCurvatureTo(station.AlongMm) * 1e6;
            if (half * half * curvature >= worstHalf * worstHalf * worstCurvature)
            {
                (worstHalf, worstCurvature) = (half, curvature);
            }
        }

        return RevolvedKernel.Pucker(worstHalf, worstCurvature, steps);
    }

    // Strips reach the crown's opening or past the small end; more stations where straight cuts would take much of the strip.
    private static GoreOutline Outline(in RevolvedInput input, double openingMm, double count)
    {
        double end = RevolvedKernel.FullLengthMm(input.Meridian, openingMm, count, 1, default(NoSteps));
        for (int pieces = FewestPieces; ; pieces *= 2)
        {
            var outline = GoreOutline.Of(input.Meridian, count, end, pieces);
            double loss = outline.Stations.Max(static one => one.ChordMm);
            if (loss <= (input.Stock.WidthMm - input.LeastLapMm) / 40)
            {
                return outline;
            }

            if (pieces >= MostPieces)
            {
                throw new InvalidOperationException("The outline of the gore is too sharp to be cut straight between stations; no accepted head is known to do this.");
            }
        }
    }

    private static (double Count, GoreOutline.Station At) Governing(GoreOutline outline, double widthMm, double lapMm)
    {
        double most = 0;
        GoreOutline.Station governing = outline.Stations[0];
        foreach (GoreOutline.Station station in outline.Stations)
        {
            double count = GoreOutline.Count(station, widthMm, lapMm);
            if (count > most)
            {
                (most, governing) = (count, station);
            }
        }

        return (most, governing);
    }
}
