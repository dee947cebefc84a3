using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>The unfolded corrugated sheet, in doubles (mm).</summary>
internal static class CorrugatedKernel
{
    internal static double PitchMm<TSteps>(CorrugatedPanel panel, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double pitch = PanelKernel.DevelopedMm(panel.PitchMm, panel.CrownMm, panel.ValleyMm, panel.DepthMm, default(NoSteps));
        if (TSteps.Records)
        {
            steps.Add(CorrugatedFormulas.Pitch, [panel.CrownMm, panel.ValleyMm, panel.DepthMm, panel.PitchMm], pitch);
        }

        return pitch;
    }

    internal static double WidthMm<TSteps>(CorrugatedPanel panel, double pitchMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double width = (panel.Corrugations * pitchMm) + panel.FlatMm;
        if (TSteps.Records)
        {
            steps.Add(CorrugatedFormulas.Width, [panel.Corrugations, pitchMm, panel.FlatMm], width);
        }

        return width;
    }

    /// <summary>The most inside corners that a strip along the flutes can reach over.</summary>
    internal static double InsideCorners<TSteps>(CorrugatedPanel panel, double widthMm, double pitchMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        int each = panel.DepthMm > 0 ? panel.ValleyMm > 0 ? 2 : 1 : 0;
        int valleys = panel.Corrugations;

        // A strip begins just before the first corner of a valley or just before the second; then it meets one first corner fewer.
        double like = Math.Min(each, 1) * Math.Min(valleys, WithAllowance.Ceiling(widthMm / pitchMm));
        double fromFirst = Math.Min(valleys, Math.Max(0, WithAllowance.Ceiling((widthMm - panel.ValleyMm) / pitchMm)));
        double fromSecond = Math.Min(valleys - 1, Math.Max(0, WithAllowance.Ceiling((widthMm - pitchMm + panel.ValleyMm) / pitchMm)));
        double corners = like + (Math.Max(0, each - 1) * Math.Max(fromFirst, fromSecond));
        if (TSteps.Records)
        {
            steps.Add(CorrugatedFormulas.InsideCorners, [each, valleys, widthMm, pitchMm, panel.ValleyMm], corners);
        }

        return corners;
    }
}
