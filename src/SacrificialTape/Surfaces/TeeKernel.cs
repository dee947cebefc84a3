using SacrificialTape.Provenance;

namespace SacrificialTape.Surfaces;

/// <summary>Areas where a round branch meets a cylinder at a right angle, axis to axis, in doubles.</summary>
internal static class TeeKernel
{
    /// <summary>
    /// The piece of the run inside the branch: integral of 2 sqrt(r^2 - y^2) R / sqrt(R^2 - y^2) over the width of the
    /// branch. 4 r^2 for an equal branch, pi r^2 for a thin one.
    /// </summary>
    internal static double HoleSquareMeters<TSteps>(double runMm, double branchMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double b = EllipticKernel.Complete(branchMm / runMm).B;
        double hole = branchMm * branchMm * b / 1e6;
        if (TSteps.Records)
        {
            steps.Add(TeeFormulas.Modulus, [branchMm, runMm], branchMm / runMm);
            steps.Add(TeeFormulas.HoleArea, [branchMm, b], hole);
        }

        return hole;
    }

    /// <summary>Run less the hole, plus the branch from the saddle line to its end.</summary>
    internal static double SquareMeters<TSteps>(
        double runMm, double branchMm, double runCentreToEndMm, double branchCentreToEndMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double run = 2 * Math.PI * runMm * runCentreToEndMm / 1e6;
        if (TSteps.Records)
        {
            steps.Add(TeeFormulas.RunArea, [runMm, runCentreToEndMm], run);
        }

        double hole = HoleSquareMeters(runMm, branchMm, steps);
        double e = EllipticKernel.Complete(branchMm / runMm).E;
        double branch = ((Math.PI * branchMm * branchCentreToEndMm) - (branchMm * runMm * e)) / 1e6;
        double area = run - hole + branch;
        if (TSteps.Records)
        {
            steps.Add(TeeFormulas.BranchArea, [branchMm, branchCentreToEndMm, runMm, e], branch);
            steps.Add(TeeFormulas.Area, [run, hole, branch], area);
        }

        return area;
    }

    /// <summary>Where the branch is shortest: over the ridge of the run.</summary>
    internal static double ShortSideMm(double runMm, double branchCentreToEndMm) => branchCentreToEndMm - (runMm / 2);

    /// <summary>Where the branch is longest: down the flank of the run.</summary>
    internal static double LongSideMm(double runMm, double branchMm, double branchCentreToEndMm) =>
        branchCentreToEndMm - (Math.Sqrt((runMm - branchMm) * (runMm + branchMm)) / 2);
}
