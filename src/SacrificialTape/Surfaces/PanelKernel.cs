using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Areas of flat and corrugated panels and of their openings, in doubles.</summary>
internal static class PanelKernel
{
    /// <summary>w h.</summary>
    internal static double RectangleSquareMeters<TSteps>(double widthMm, double heightMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = widthMm * heightMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(PanelFormulas.Rectangle, [widthMm, heightMm], area);
        }

        return area;
    }

    /// <summary>pi D^2 / 4.</summary>
    internal static double DiscSquareMeters<TSteps>(double diameterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = Math.PI / 4 * diameterMm * diameterMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(PanelFormulas.Disc, [diameterMm], area);
        }

        return area;
    }

    /// <summary>pi (D^2 - d^2) / 4, as a product that keeps its digits for a narrow ring.</summary>
    internal static double RingSquareMeters<TSteps>(double outsideMm, double insideMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = Math.PI / 4 * (outsideMm - insideMm) * (outsideMm + insideMm) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(PanelFormulas.Ring, [outsideMm, insideMm], area);
        }

        return area;
    }

    /// <summary>Circles of one kind.</summary>
    internal static double RoundSquareMeters<TSteps>(double diameterMm, int count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = count * Math.PI / 4 * diameterMm * diameterMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(PanelFormulas.RoundOpenings, [count, diameterMm], area);
        }

        return area;
    }

    /// <summary>Rectangles of one kind.</summary>
    internal static double RectangularSquareMeters<TSteps>(double widthMm, double heightMm, int count, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double area = count * widthMm * heightMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(PanelFormulas.RectangularOpenings, [count, widthMm, heightMm], area);
        }

        return area;
    }

    /// <summary>What is left of the panel.</summary>
    internal static double NetSquareMeters<TSteps>(double gross, double openings, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            steps.Add(PanelFormulas.Area, [gross, openings], gross - openings);
        }

        return gross - openings;
    }

    /// <summary>What a string laid along one corrugation measures: crown, valley and two webs.</summary>
    internal static double DevelopedMm<TSteps>(double pitchMm, double crownMm, double valleyMm, double depthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double web = double.Hypot(depthMm, (pitchMm - crownMm - valleyMm) / 2);
        double developed = crownMm + valleyMm + (2 * web);
        if (TSteps.Records)
        {
            steps.Add(PanelFormulas.Web, [depthMm, pitchMm, crownMm, valleyMm], web);
            steps.Add(PanelFormulas.Developed, [crownMm, valleyMm, web], developed);
        }

        return developed;
    }

    /// <summary>Corrugations and the flat beside them, along the sheet.</summary>
    internal static double CorrugatedSquareMeters<TSteps>(CorrugatedPanel panel, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double developed = DevelopedMm(panel.PitchMm, panel.CrownMm, panel.ValleyMm, panel.DepthMm, steps);
        double area = ((panel.Corrugations * developed) + panel.FlatMm) * panel.LengthMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(PanelFormulas.Corrugated, [panel.Corrugations, developed, panel.FlatMm, panel.LengthMm], area);
        }

        return area;
    }
}
