using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>Whole strips along meridians, some of them stopped where the rest suffice, in doubles (mm).</summary>
internal static class MeridianStripKernel
{
    /// <summary>Strips that the low edge asks for, made a multiple of 2 to the number of stages, at least 3.</summary>
    internal static double Count<TSteps>(in RevolvedInput input, int stages, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double circumference = PipeKernel.CircumferenceMm(input.DiameterMm, steps);
        double asked = SpanKernel.ClosedCount(circumference, input.Stock.WidthMm, input.LeastLapMm, steps);
        double multiple = Math.ScaleB(1, stages);
        double count = multiple * WithAllowance.Ceiling(Math.Max(3, asked) / multiple);
        if (TSteps.Records)
        {
            steps.Add(RevolvedFormulas.StagedCount, [asked, multiple], count);
        }

        return count;
    }

    /// <summary>The most stages that leave three strips at the crown or the small end.</summary>
    internal static int MostStages(in RevolvedInput input)
    {
        int stages = 0;
        while (input.Meridian.MostSlope > 0 && Math.ScaleB(Count(input, stages + 1, default(NoSteps)), -stages - 1) >= 3)
        {
            stages++;
        }

        return stages;
    }

    /// <summary>The number of stages that takes the least tape; of several, the smallest.</summary>
    internal static int BestStages(in RevolvedInput input, double openingMm)
    {
        int best = 0;
        double least = double.MaxValue;
        int most = MostStages(input);
        for (int stages = 0; stages <= most; stages++)
        {
            double count = Count(input, stages, default(NoSteps));
            double total = Stops(input, openingMm, count, stages, 1, default(NoSteps)).Sum(static stop => stop.Count * stop.LengthMm);
            if (total < least * (1 - WithAllowance.RelativeAllowance))
            {
                (best, least) = (stages, total);
            }
        }

        return best;
    }

    /// <summary>
    /// Where strips stop: after each stage half of them, where the radius has shrunk so far that the rest lap enough.
    /// </summary>
    internal static List<Stop> Stops<TSteps>(in RevolvedInput input, double openingMm, double count, int stages, double layers, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        Meridian meridian = input.Meridian;
        double width = input.Stock.WidthMm;
        double reached = meridian.LengthMm - openingMm;
        double most = meridian.MostSlope;
        double full = RevolvedKernel.FullLengthMm(meridian, openingMm, Math.ScaleB(count, -stages), layers, steps);
        var stops = new List<Stop>(stages + 1);
        double share = 0;
        double from = 0;
        double present = count;
        for (int stage = 1; stage <= stages; stage++)
        {
            double rest = present / 2;
            double radius = rest * (width - input.LeastLapMm) / (2 * Math.PI);
            double at = Math.Min(meridian.WhereRadiusMm(radius), reached);
            double here = meridian.At(at).RadiusMm;
            double past = here / most * ((1 / Math.Cos(most * Math.PI / (2 * rest))) - 1);
            double length = at + past + input.Choices.EndLapMm;
            if (TSteps.Records)
            {
                steps.Add(RevolvedFormulas.StageRadius, [rest, width, input.LeastLapMm], radius);
                steps.Add(RevolvedFormulas.StageLength, [at, here, most, rest, input.Choices.EndLapMm], length);
            }

            share += (meridian.AreaTo(at) - meridian.AreaTo(from)) / (present * width);
            stops.Add(new(rest, Math.Min(length, full), share));
            from = at;
            present = rest;
        }

        share += (meridian.AreaTo(reached) - meridian.AreaTo(from)) / (present * width);
        stops.Add(new(present, full, share));
        return stops;
    }

    /// <summary>Strips of one length: how many, how long, and the length of each that is its share of the surface.</summary>
    internal readonly record struct Stop(double Count, double LengthMm, double CoverMm);
}
