using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>What the lays on surfaces of revolution share, in doubles (mm, curvature per m2, parts of one).</summary>
internal static class RevolvedKernel
{
    /// <summary>S, straight flange and dish.</summary>
    internal static double LengthMm<TSteps>(Meridian meridian, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double length = meridian.LengthMm;
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.Length, [length - meridian.DishMm, meridian.DishMm], length);
        }

        return length;
    }

    /// <summary>a = w / 2 - min(o, w / 4): what the disc closes; zero on an open surface.</summary>
    internal static double DiscOpeningMm<TSteps>(bool closes, double widthMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (!closes)
        {
            return 0;
        }

        double opening = (widthMm / 2) - Math.Min(lapMm, widthMm / 4);
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.DiscOpening, [widthMm, lapMm], opening);
        }

        return opening;
    }

    /// <summary>
    /// Length of strips that reach the crown or the small end. Beside its centre line a strip stands farther back than on
    /// it, so that it runs on by as much.
    /// </summary>
    internal static double FullLengthMm<TSteps>(Meridian meridian, double openingMm, double count, double layers, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double most = meridian.MostSlope;
        double whole = meridian.LengthMm;
        if (meridian.Closes)
        {
            double toDisc = whole - (openingMm * Math.Cos(most * Math.PI / count));
            if (TSteps.Records)
            {
                steps.Add(RevolvedFormulas.LengthToDisc, [whole, openingMm, most, count], toDisc);
            }

            return toDisc;
        }

        if (most == 0)
        {
            if (TSteps.Records)
            {
                steps.Add(RevolvedFormulas.LengthOfCylinder, [whole], whole);
            }

            return whole;
        }

        double small = meridian.At(whole).RadiusMm;
        double past = whole + (small / most * (1 - Math.Cos(most * layers * Math.PI / count)));
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.LengthPastEnd, [whole, small, most, layers, count], past);
        }

        return past;
    }

    internal static double LeastLapMm<TSteps>(double lapMm, double elsewhereMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double least = Math.Min(lapMm, elsewhereMm);
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.LeastLap, [lapMm, elsewhereMm], least);
        }

        return least;
    }

    internal static double Layers<TSteps>(int passes, double most, double widthMm, double leastLapMm, double wanderMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double layers = passes * Math.Min(most, WithAllowance.Floor(widthMm / (widthMm - leastLapMm + wanderMm)));
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.Layers, [passes, most, widthMm, leastLapMm, wanderMm], layers);
        }

        return layers;
    }

    /// <summary>1 - cos(b sqrt(K)); at a right angle the edges would meet, and all of them is pucker.</summary>
    internal static double Pucker<TSteps>(double halfMm, double perSquareMeter, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double half = Math.Sin(Math.Min(Math.PI / 2, halfMm / 1000 * Math.Sqrt(perSquareMeter)) / 2);
        double strain = 2 * half * half;
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.Pucker, [halfMm, perSquareMeter], strain);
        }

        return strain;
    }

    /// <summary>The larger of the strips' pucker and that of the disc, whose edge lies on a circle smaller than its own.</summary>
    internal static double WithDisc<TSteps>(Meridian meridian, double widthMm, double strips, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (!meridian.Closes)
        {
            return strips;
        }

        double circle = meridian.EndsInTip ? widthMm / 2 : Math.Min(widthMm / 2, meridian.At(meridian.LengthMm - (widthMm / 2)).RadiusMm);
        double disc = 1 - (circle / (widthMm / 2));
        double most = Math.Max(strips, disc);
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.DiscPucker, [circle, widthMm], disc);
            steps.Add(RevolvedFormulas.MostPucker, [strips, disc], most);
        }

        return most;
    }

    internal static double WidestForPuckerMm(double strain, double perSquareMeter) =>
        4000 * Math.Asin(Math.Sqrt(strain / 2)) / Math.Sqrt(perSquareMeter);

    /// <summary>A strip of a lay; what is trimmed cannot be more than what its cover leaves.</summary>
    internal static Strip Cut(in RevolvedInput input, double lengthMm, int count, StripPurpose purpose, bool maySplice, double coverMm, double trimMm) =>
        Strip.Computed(input.Stock, lengthMm, count, purpose, maySplice, coverMm, Math.Clamp(trimMm, 0, Math.Max(0, lengthMm - coverMm)));

    /// <summary>The disc on the crown, cut from a square of the strip.</summary>
    internal static Strip Disc(in RevolvedInput input, double openingMm)
    {
        double width = input.Stock.WidthMm;
        Meridian meridian = input.Meridian;
        double cover = (meridian.AreaTo(meridian.LengthMm) - meridian.AreaTo(meridian.LengthMm - openingMm)) / width;
        return Cut(input, width, input.Choices.Passes, StripPurpose.Other, false, cover, width * (1 - (Math.PI / 4)));
    }

    /// <summary>What a strip loses when its square ends are trimmed to the round edges of a cone, as a length of it.</summary>
    internal static double TrimAtEndsMm(Meridian meridian, double widthMm, double lowHalfMm, double highHalfMm, double pastMm)
    {
        double trimmed = 0;
        MeridianPoint low = meridian.At(0);
        if (meridian.BeginsStraight && low.Slope > 0)
        {
            double apex = low.RadiusMm / low.Slope;
            trimmed += Segment(apex, Math.Min(lowHalfMm, apex));
        }

        MeridianPoint high = meridian.At(meridian.LengthMm);
        if (!meridian.Closes && high.Slope > 0)
        {
            // Between the line square to the strip and the circle of the small end, as far as the circle reaches past it.
            double apex = high.RadiusMm / high.Slope;
            double reach = Math.Sqrt(Math.Max(0, (apex * apex) - ((apex - pastMm) * (apex - pastMm))));
            double half = Math.Min(highHalfMm, reach);
            trimmed += (2 * half * pastMm) - Segment(apex, half);
        }

        return trimmed / widthMm;
    }

    // Area between a circle and its tangent, to a distance on both sides of where they touch.
    private static double Segment(double radiusMm, double halfMm)
    {
        double share = Math.Min(1, halfMm / radiusMm);
        return radiusMm * radiusMm * ((2 * share) - (share * Math.Sqrt(1 - (share * share))) - Math.Asin(share));
    }
}
