using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>Tape by a measured area, in doubles.</summary>
internal static class MeasuredAreaKernel
{
    internal static double LapShare<TSteps>(double lapMm, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double share = lapMm / widthMm;
        if (TSteps.Records)
        {
            steps.Add(MeasuredAreaFormulas.LapShare, [lapMm, widthMm], share);
        }

        return share;
    }

    internal static double StripLengthMm<TSteps>(double areaM2, double widthMm, double lapShare, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double length = areaM2 * 1e6 / (widthMm * (1 - lapShare));
        if (TSteps.Records)
        {
            steps.Add(MeasuredAreaFormulas.StripLength, [areaM2, widthMm, lapShare], length);
        }

        return length;
    }

    internal static double Layers<TSteps>(int wanted, double widthMm, double lapMm, double wanderMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double layers = wanted * Math.Min(1, WithAllowance.Floor(widthMm / (widthMm - lapMm + wanderMm)));
        if (TSteps.Records)
        {
            steps.Add(MeasuredAreaFormulas.Layers, [wanted, widthMm, lapMm, wanderMm], layers);
        }

        return layers;
    }
}
