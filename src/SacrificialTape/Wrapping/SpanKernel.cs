using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>Strips side by side over a span, with their laps made equal. Doubles in mm; callers check arguments.</summary>
internal static class SpanKernel
{
    /// <summary>Open span W: n = ceil((W - o) / (w - o)), 1 if W is at most w.</summary>
    internal static double OpenCount<TSteps>(double spanMm, double widthMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double count = Math.Max(1, WithAllowance.Ceiling((spanMm - lapMm) / (widthMm - lapMm)));
        if (TSteps.Records)
        {
            steps.Add(SpanFormulas.OpenCount, [spanMm, widthMm, lapMm], count);
        }

        return count;
    }

    /// <summary>Equal laps of n strips over an open span: (n w - W) / (n - 1). Needs n of 2 or more.</summary>
    internal static double OpenLapMm<TSteps>(double count, double widthMm, double spanMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lap = ((count * widthMm) - spanMm) / (count - 1);
        if (TSteps.Records)
        {
            steps.Add(SpanFormulas.OpenLap, [count, widthMm, spanMm], lap);
        }

        return lap;
    }

    /// <summary>Closed circumference C: n = ceil(C / (w - o)).</summary>
    internal static double ClosedCount<TSteps>(double circumferenceMm, double widthMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double count = WithAllowance.Ceiling(circumferenceMm / (widthMm - lapMm));
        if (TSteps.Records)
        {
            steps.Add(SpanFormulas.ClosedCount, [circumferenceMm, widthMm, lapMm], count);
        }

        return count;
    }

    /// <summary>Equal laps of n strips round a circumference: w - C / n.</summary>
    internal static double ClosedLapMm<TSteps>(double widthMm, double circumferenceMm, double count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lap = widthMm - (circumferenceMm / count);
        if (TSteps.Records)
        {
            steps.Add(SpanFormulas.ClosedLap, [widthMm, circumferenceMm, count], lap);
        }

        return lap;
    }

    /// <summary>A ring is the circumference plus its lap on its own end.</summary>
    internal static double RingLengthMm<TSteps>(double circumferenceMm, double endLapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double length = circumferenceMm + endLapMm;
        if (TSteps.Records)
        {
            steps.Add(SpanFormulas.RingLength, [circumferenceMm, endLapMm], length);
        }

        return length;
    }

    /// <summary>
    /// Layers everywhere of strips over an open span: one at its ends, none between strips whose lap the wander can open.
    /// </summary>
    internal static double OpenLayers<TSteps>(int passes, double widthMm, double wanderMm, double spacingMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double layers = passes * Math.Min(1, WithAllowance.Floor(widthMm / (spacingMm + wanderMm)));
        if (TSteps.Records)
        {
            steps.Add(SpanFormulas.OpenLayers, [passes, widthMm, wanderMm, spacingMm], layers);
        }

        return layers;
    }

    /// <summary>Layers everywhere of n strips round a circumference: floor(w / (C / n + wander)).</summary>
    internal static double ClosedLayers<TSteps>(
        int passes, double widthMm, double wanderMm, double circumferenceMm, double count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double layers = passes * WithAllowance.Floor(widthMm / ((circumferenceMm / count) + wanderMm));
        if (TSteps.Records)
        {
            steps.Add(SpanFormulas.ClosedLayers, [passes, widthMm, wanderMm, circumferenceMm, count], layers);
        }

        return layers;
    }
}
