using SacrificialTape.Provenance;

namespace SacrificialTape.Wrapping;

/// <summary>Strips on a strap, in doubles (mm).</summary>
internal static class StrapLayKernel
{
    internal static double OuterSpanMm<TSteps>(double widthMm, double thicknessMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double span = widthMm + (2 * thicknessMm);
        if (TSteps.Records)
        {
            steps.Add(StrapLayFormulas.OuterSpan, [widthMm, thicknessMm], span);
        }

        return span;
    }

    internal static double Pucker<TSteps>(double thicknessMm, double pipeMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strain = thicknessMm / ((pipeMm / 2) + thicknessMm);
        if (TSteps.Records)
        {
            steps.Add(StrapLayFormulas.Pucker, [thicknessMm, pipeMm], strain);
        }

        return strain;
    }

    internal static double TurnedInMm<TSteps>(double stripMm, double spanMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double turned = (stripMm - spanMm) / 2;
        if (TSteps.Records)
        {
            steps.Add(StrapLayFormulas.TurnedIn, [stripMm, spanMm], turned);
        }

        return turned;
    }
}
