using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;

namespace SacrificialTape.Wrapping;

/// <summary>
/// Rings on the run and on the branch of a tee, in doubles (mm, mm2). The run's axis is x, the branch's z; t runs round the
/// branch from the ridge of the run, where its saddle line stands highest.
/// </summary>
internal static class TeeLayKernel
{
    internal static double RunRings<TSteps>(double reachMm, double lapMm, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double count = WithAllowance.Ceiling(((2 * reachMm) + lapMm) / (widthMm - lapMm));
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.RunRings, [reachMm, lapMm, widthMm], count);
        }

        return count;
    }

    internal static double RunLapMm<TSteps>(double count, double widthMm, double reachMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double lap = ((count * widthMm) - (2 * reachMm)) / (count + 1);
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.RunLap, [count, widthMm, reachMm], lap);
        }

        return lap;
    }

    /// <summary>How far down the branch a flap is cut that reaches v square to the saddle line everywhere.</summary>
    internal static double FlapMm<TSteps>(double lapMm, double branchMm, double runMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double complement = Math.Sqrt((runMm - branchMm) * (runMm + branchMm)) / runMm;
        double flap = lapMm * Math.Sqrt(2 / (1 + complement));
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.Flap, [lapMm, branchMm, runMm], flap);
        }

        return flap;
    }

    internal static double BranchSpanMm<TSteps>(double reachMm, double runMm, double branchMm, double flapMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double span = reachMm - LowestMm(runMm, branchMm) + flapMm + lapMm;
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.BranchSpan, [reachMm, runMm, branchMm, flapMm, lapMm], span);
        }

        return span;
    }

    internal static double LeastLapMm<TSteps>(double runMm, double branchMm, double saddleMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double least = Math.Min(Math.Min(runMm, branchMm), Math.Min(saddleMm, lapMm));
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.LeastLap, [runMm, branchMm, saddleMm, lapMm], least);
        }

        return least;
    }

    /// <summary>A ring that meets the branch over its whole width ends at the saddle line on both sides.</summary>
    internal static double OpenRingMm<TSteps>(double circumferenceMm, double runMm, double branchMm, double edgeMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double ring = circumferenceMm - (2 * HalfHoleMm(runMm, branchMm, edgeMm));
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.OpenRing, [circumferenceMm, runMm, branchMm, edgeMm], ring);
        }

        return ring;
    }

    /// <summary>A strip low on the branch lies on its two flanks only, where the saddle line is deep.</summary>
    internal static double CrescentMm<TSteps>(double branchMm, double runMm, double heightMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = branchMm * Math.Acos(Math.Clamp(Math.Sqrt(Math.Max(0, (runMm * runMm) - (4 * heightMm * heightMm))) / branchMm, 0, 1));
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.Crescent, [branchMm, runMm, heightMm], strip);
        }

        return strip;
    }

    internal static double StripMm<TSteps>(int passes, double runMm, double branchMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double strip = passes * (runMm + branchMm);
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.Strip, [passes, runMm, branchMm], strip);
        }

        return strip;
    }

    internal static double TrimMm<TSteps>(double stripMm, int passes, double endsMm, double keptMm2, double widthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double trim = stripMm - (passes * (endsMm + (keptMm2 / widthMm)));
        if (TSteps.Records)
        {
            steps.Add(TeeLayFormulas.Trim, [stripMm, passes, endsMm, keptMm2 / 1e6, widthMm], trim);
        }

        return trim;
    }

    /// <summary>Lowest point of the saddle line above the run's axis: on the flanks of the run.</summary>
    internal static double LowestMm(double runMm, double branchMm) => Math.Sqrt((runMm - branchMm) * (runMm + branchMm)) / 2;

    /// <summary>Half of the hole, along the steel round the run, at a distance along it from the branch's axis.</summary>
    internal static double HalfHoleMm(double runMm, double branchMm, double alongMm)
    {
        double half = branchMm / 2;
        double inside = (half - alongMm) * (half + alongMm);
        return inside <= 0 ? 0 : runMm / 2 * Math.Asin(Math.Min(1, Math.Sqrt(inside) / (runMm / 2)));
    }

    /// <summary>Area of the hole between two distances along the run.</summary>
    internal static double HoleMm2(double runMm, double branchMm, double fromMm, double toMm)
    {
        // x = r cos t: the steep ends of the hole become smooth.
        double half = branchMm / 2;
        double low = Math.Acos(Math.Clamp(toMm / half, -1, 1));
        double high = Math.Acos(Math.Clamp(fromMm / half, -1, 1));
        double k = branchMm / runMm;
        double Element(double t) => Math.Asin(Math.Min(1, k * Math.Sin(t))) * Math.Sin(t);

        // On an equal tee the hole has a corner over the branch's axis.
        double middle = Math.Clamp(Math.PI / 2, low, high);
        return runMm * half * (IntegralKernel.Of(Element, low, middle) + IntegralKernel.Of(Element, middle, high));
    }

    /// <summary>Area of a band of the branch, between two heights, that lies below the saddle line less the flap.</summary>
    internal static double BelowMm2(double runMm, double branchMm, double flapMm, double fromMm, double toMm)
    {
        // A quarter: all of the band as far as the line lies above it, then what is left under the line.
        double tall = Turn(runMm, branchMm, toMm + flapMm);
        double wide = Turn(runMm, branchMm, fromMm + flapMm);
        double k = branchMm / runMm;
        double Height(double t) => (runMm / 2 * Math.Sqrt(Math.Max(0, 1 - Math.Pow(k * Math.Sin(t), 2)))) - flapMm - fromMm;
        return 2 * branchMm * (((toMm - fromMm) * tall) + IntegralKernel.Of(Height, tall, wide));
    }

    // From the ridge to where the saddle line has come down to a height above the run's axis.
    private static double Turn(double runMm, double branchMm, double heightMm)
    {
        double half = runMm / 2;
        if (heightMm >= half)
        {
            return 0;
        }

        double low = LowestMm(runMm, branchMm);
        return heightMm <= low ? Math.PI / 2 : Math.Asin(Math.Min(1, Math.Sqrt((half - heightMm) * (half + heightMm)) / (branchMm / 2)));
    }
}
