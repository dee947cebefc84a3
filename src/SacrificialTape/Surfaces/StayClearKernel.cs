using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Areas and lengths that stay clear, in doubles (mm, m2).</summary>
internal static class StayClearKernel
{
    internal static double RectangularSpotsM2<TSteps>(int count, double widthMm, double heightMm, double marginMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = count * (widthMm + (2 * marginMm)) * (heightMm + (2 * marginMm)) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(StayClearFormulas.RectangularSpots, [count, widthMm, marginMm, heightMm], area);
        }

        return area;
    }

    internal static double RoundSpotsM2<TSteps>(int count, double diameterMm, double marginMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double grown = diameterMm + (2 * marginMm);
        double area = count * Math.PI * grown * grown / 4 / 1e6;
        if (TSteps.Records)
        {
            steps.Add(StayClearFormulas.RoundSpots, [count, diameterMm, marginMm], area);
        }

        return area;
    }

    internal static double BandsMm<TSteps>(int count, double lengthMm, double marginMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double length = count * (lengthMm + (2 * marginMm));
        if (TSteps.Records)
        {
            steps.Add(StayClearFormulas.Band, [count, lengthMm, marginMm], length);
        }

        return length;
    }

    internal static double AllBandsMm<TSteps>(double beforeMm, double bandsMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double all = beforeMm + bandsMm;
        if (TSteps.Records)
        {
            steps.Add(StayClearFormulas.AllBands, [beforeMm, bandsMm], all);
        }

        return all;
    }

    internal static double CoveredMm<TSteps>(double pipeMm, double bandsMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double covered = pipeMm - bandsMm;
        if (TSteps.Records)
        {
            steps.Add(StayClearFormulas.CoveredLength, [pipeMm, bandsMm], covered);
        }

        return covered;
    }

    internal static double EqualSpanMm<TSteps>(double pipeMm, double bandsMm, int bands, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double span = (pipeMm - bandsMm) / (bands + 1);
        if (TSteps.Records)
        {
            steps.Add(StayClearFormulas.EqualSpan, [pipeMm, bandsMm, bands], span);
        }

        return span;
    }
}
