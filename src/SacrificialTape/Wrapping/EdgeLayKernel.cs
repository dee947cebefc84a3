using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>Strips folded over the edge of a sheet, in doubles (mm).</summary>
internal static class EdgeLayKernel
{
    internal static double ExtraReachMm<TSteps>(double stripMm, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double extra = Math.Max(0, stripMm - widthMm); // a strip of just the width may miss it by the last digit
        if (TSteps.Records)
        {
            steps.Add(EdgeLayFormulas.ExtraReach, [stripMm, widthMm], extra);
        }

        return extra;
    }

    internal static double SideStripMm<TSteps>(double sideMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = sideMm + lapMm;
        if (TSteps.Records)
        {
            steps.Add(EdgeLayFormulas.SideStrip, [sideMm, lapMm], strip);
        }

        return strip;
    }

    /// <summary>The tab that goes round a corner is as wide as the sheet is thick; beside it the strip is cut away.</summary>
    internal static double TabTrimMm<TSteps>(double lapMm, double stripMm, double thicknessMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double trim = lapMm * (stripMm - thicknessMm) / stripMm;
        if (TSteps.Records)
        {
            steps.Add(EdgeLayFormulas.TabTrim, [lapMm, stripMm, thicknessMm], trim);
        }

        return trim;
    }

    internal static double PatchMm<TSteps>(double reachMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double patch = reachMm + lapMm;
        if (TSteps.Records)
        {
            steps.Add(EdgeLayFormulas.Patch, [reachMm, lapMm], patch);
        }

        return patch;
    }

    internal static double Stretch<TSteps>(double reachMm, double diameterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strain = 2 * reachMm / diameterMm;
        if (TSteps.Records)
        {
            steps.Add(EdgeLayFormulas.Stretch, [reachMm, diameterMm], strain);
        }

        return strain;
    }

    internal static double Layers<TSteps>(int passes, double widthMm, double lapMm, double wanderMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double layers = passes * Math.Min(1, WithAllowance.Floor((widthMm + lapMm) / (widthMm + wanderMm)));
        if (TSteps.Records)
        {
            steps.Add(EdgeLayFormulas.Layers, [passes, widthMm, lapMm, wanderMm], layers);
        }

        return layers;
    }
}
