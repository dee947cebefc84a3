using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Areas of a flange, in doubles.</summary>
internal static class FlangeKernel
{
    /// <summary>Rim, back and front, whichever are covered.</summary>
    internal static double SquareMeters<TSteps>(Flange flange, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rim = flange.Parts.HasFlag(FlangeParts.Rim) ? Rim(flange, steps) : 0;
        double back = flange.Parts.HasFlag(FlangeParts.Back) ? Ring(flange, flange.HubMm, FlangeFormulas.Back, steps) : 0;
        double front = flange.Parts.HasFlag(FlangeParts.Front) ? Ring(flange, flange.FaceMm, FlangeFormulas.Front, steps) : 0;
        double area = rim + back + front;
        if (TSteps.Records)
        {
            steps.Add(FlangeFormulas.Area, [rim, back, front], area);
        }

        return area;
    }

    /// <summary>pi D t.</summary>
    internal static double Rim<TSteps>(Flange flange, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rim = Math.PI * flange.OutsideMm * flange.RimMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(FlangeFormulas.Rim, [flange.OutsideMm, flange.RimMm], rim);
        }

        return rim;
    }

    /// <summary>A flat ring less the bolt holes.</summary>
    internal static double Ring<TSteps>(Flange flange, double insideMm, Formula formula, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double ring = (flange.OutsideMm - insideMm) * (flange.OutsideMm + insideMm);
        double area = Math.PI / 4 * (ring - (flange.BoltHoles * flange.BoltHoleMm * flange.BoltHoleMm)) / 1e6;
        if (TSteps.Records)
        {
            steps.Add(formula, [flange.OutsideMm, insideMm, flange.BoltHoles, flange.BoltHoleMm], area);
        }

        return area;
    }

    /// <summary>What of the table's thickness stands at the rim.</summary>
    internal static double RimThicknessMm<TSteps>(double thicknessMm, double raisedFaceMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double rim = thicknessMm - raisedFaceMm;
        if (TSteps.Records)
        {
            steps.Add(FlangeFormulas.RimThickness, [thicknessMm, raisedFaceMm], rim);
        }

        return rim;
    }
}
