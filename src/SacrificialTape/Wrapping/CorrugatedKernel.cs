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
        double first = Math.Min(each, 1) * WithAllowance.Ceiling(widthMm / pitchMm);
        double second = Math.Max(0, each - 1)
            * Math.Max(0, WithAllowance.Ceiling((widthMm - Math.Min(panel.ValleyMm, pitchMm - panel.ValleyMm)) / pitchMm));
        double corners = Math.Min(each * panel.Corrugations, first + second);
        if (TSteps.Records)
        {
            steps.Add(CorrugatedFormulas.InsideCorners, [each, panel.Corrugations, widthMm, pitchMm, panel.ValleyMm], corners);
        }

        return corners;
    }
}
