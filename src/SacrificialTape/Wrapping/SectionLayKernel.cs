using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>Numbers of strips placed round the outline of a section, in doubles (mm).</summary>
internal static class SectionLayKernel
{
    /// <summary>What no placing of strips can undercut.</summary>
    internal static double LeastCount<TSteps>(double perimeterMm, double widthMm, double lapMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double count = WithAllowance.Ceiling(perimeterMm / (widthMm - lapMm));
        if (TSteps.Records)
        {
            steps.Add(SectionLayFormulas.LeastCount, [perimeterMm, widthMm, lapMm], count);
        }

        return count;
    }

    /// <summary>Lap of each strip on the next, of the last on the first.</summary>
    internal static double[] LapsMm<TSteps>(List<(double Start, double End)> chain, double widthMm, double perimeterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double[] laps = new double[chain.Count];
        for (int i = 0; i < laps.Length; i++)
        {
            double next = i + 1 < laps.Length ? chain[i + 1].Start : chain[0].Start + perimeterMm;
            laps[i] = chain[i].End - next;
            if (TSteps.Records)
            {
                steps.Add(SectionLayFormulas.End, [chain[i].Start, widthMm, widthMm - (chain[i].End - chain[i].Start)], chain[i].End);
                steps.Add(SectionLayFormulas.Lap, [chain[i].End, next], laps[i]);
            }
        }

        return laps;
    }

    /// <summary>
    /// Least strips over any spot. Strips thin out just past the far edge of one; there lie those whose own edges are on
    /// both sides of it, the m-th next one set back by m times the wander.
    /// </summary>
    internal static double Layers<TSteps>(
        int passes, List<(double Start, double End)> chain, double widthMm, double perimeterMm, double wanderMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        int count = chain.Count;
        int least = int.MaxValue;
        double slack = perimeterMm * WithAllowance.RelativeAllowance;
        for (int i = 0; i < count; i++)
        {
            double spot = chain[i].End;
            int over = 0;
            for (int next = 1; ; next++)
            {
                int at = (i + next) % count;
                double start = chain[at].Start + ((i + next) / count * perimeterMm);
                double end = chain[at].End + ((i + next) / count * perimeterMm);

                // Far edges never come in the wrong order: from this one on all strips begin later than the spot.
                if (end - spot > widthMm + slack)
                {
                    break;
                }

                over += start + (next * wanderMm) <= spot + slack && end > spot + slack ? 1 : 0;
            }

            least = Math.Min(least, over);
        }

        if (TSteps.Records)
        {
            steps.Add(SectionLayFormulas.Layers, [passes, least], (double)passes * least);
        }

        return (double)passes * least;
    }

    /// <summary>Tape on the outline over the outline.</summary>
    internal static double OnAverage<TSteps>(int passes, double count, double widthMm, double trimmedMm, double perimeterMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double average = passes * ((count * widthMm) - trimmedMm) / perimeterMm;
        if (TSteps.Records)
        {
            steps.Add(SectionLayFormulas.OnAverage, [passes, count, widthMm, trimmedMm, perimeterMm], average);
        }

        return average;
    }
}
