using SacrificialTape.Provenance;

namespace SacrificialTape.ServiceLife;

/// <summary>
/// Loss over time and its inverse along a table, in um, um/a and years. The table was made at its own first-year rate;
/// under another rate the whole curve is stretched in proportion. A rate of zero never uses anything up.
/// </summary>
internal static class LossCurveKernel
{
    private const int MostIterations = 200;

    internal static double LossUm(LossTable table, double rate, double years) =>
        OwnLossUm(table, years) * (rate / table.FirstYearUm);

    internal static double RateUm(LossTable table, double rate, double years) =>
        OwnSlope(table, years) * (rate / table.FirstYearUm);

    internal static double Years<TSteps>(LossTable table, double zincUm, double rate, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (zincUm == 0)
        {
            return 0;
        }

        if (rate == 0)
        {
            return double.PositiveInfinity;
        }

        double own = zincUm / (rate / table.FirstYearUm);
        if (TSteps.Records)
        {
            steps.Add(LossFormulas.OwnLoss, [zincUm, table.FirstYearUm, rate], own);
        }

        return OwnYears(table, own, steps);
    }

    /// <summary>Loss along the table at its own rate; beyond an end without a slope it is not a number.</summary>
    internal static double OwnLossUm(LossTable table, double years)
    {
        int at = Segment(table.Years, years);
        if (at == table.Years.Length - 1)
        {
            double past = years - table.Years[at];
            return past == 0 ? table.Um[at] : table.Um[at] + (past * (table.After ?? double.NaN));
        }

        double step = table.Years[at + 1] - table.Years[at];
        double share = (years - table.Years[at]) / step;
        return table.Slopes is null
            ? table.Um[at] + (share * (table.Um[at + 1] - table.Um[at]))
            : Cubic(table, at, share);
    }

    private static double OwnSlope(LossTable table, double years)
    {
        int at = Segment(table.Years, years);
        if (at == table.Years.Length - 1)
        {
            // At the very end of a curve that stops there, the slope that leads up to it.
            return table.After ?? table.Slopes?[at] ?? Chord(table, at - 1);
        }

        double step = table.Years[at + 1] - table.Years[at];
        return table.Slopes is null
            ? Chord(table, at)
            : CubicSlope(table, at, (years - table.Years[at]) / step) / step;
    }

    private static double OwnYears<TSteps>(LossTable table, double um, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        int at = Segment(table.Um, um);
        bool beyond = at == table.Um.Length - 1;
        double start = table.Years[at];
        if (beyond || table.Slopes is null)
        {
            double slope = beyond ? table.After ?? (um == table.Um[at] ? Chord(table, at - 1) : double.NaN) : Chord(table, at);
            double straight = start + ((um - table.Um[at]) / slope);
            if (TSteps.Records)
            {
                steps.Add(LossFormulas.StraightTime, [start, um, table.Um[at], slope], straight);
            }

            return straight;
        }

        double share = Share(table, at, um);
        double step = table.Years[at + 1] - start;
        double years = start + (share * step);
        if (TSteps.Records)
        {
            steps.Add(
                LossFormulas.CubicLoss,
                [table.Um[at], share, step, table.Slopes[at], table.Um[at + 1], table.Slopes[at + 1]],
                Cubic(table, at, share));
            steps.Add(LossFormulas.CubicTime, [start, share, step], years);
        }

        return years;
    }

    /// <summary>Where between two points a rising cubic takes a value: Newton's rule, kept within a shrinking bracket.</summary>
    private static double Share(LossTable table, int at, double um)
    {
        double low = 0;
        double high = 1;
        double share = (um - table.Um[at]) / (table.Um[at + 1] - table.Um[at]);
        for (int i = 0; i < MostIterations && high > low; i++)
        {
            double miss = Cubic(table, at, share) - um;
            if (miss == 0)
            {
                break;
            }

            (low, high) = miss > 0 ? (low, share) : (share, high);
            double next = share - (miss / CubicSlope(table, at, share));
            if (!(next > low && next < high))
            {
                next = low + ((high - low) / 2);
            }

            if (next == share)
            {
                break;
            }

            share = next;
        }

        return share;
    }

    private static double Cubic(LossTable table, int at, double share)
    {
        (double rise, double first, double second, _) = Parts(table, at);
        return table.Um[at] + (share * (first + (share * ((3 * rise) - (2 * first) - second + (share * (first + second - (2 * rise)))))));
    }

    // By the share of the step, not by the year.
    private static double CubicSlope(LossTable table, int at, double share)
    {
        (double rise, double first, double second, _) = Parts(table, at);
        return first + (share * ((2 * ((3 * rise) - (2 * first) - second)) + (3 * share * (first + second - (2 * rise)))));
    }

    private static (double Rise, double First, double Second, double Step) Parts(LossTable table, int at)
    {
        double step = table.Years[at + 1] - table.Years[at];
        return (table.Um[at + 1] - table.Um[at], step * table.Slopes![at], step * table.Slopes[at + 1], step);
    }

    private static double Chord(LossTable table, int at) =>
        (table.Um[at + 1] - table.Um[at]) / (table.Years[at + 1] - table.Years[at]);

    // The last point at or before a value: at a corner the piece that begins there counts.
    private static int Segment(double[] points, double value)
    {
        int found = Array.BinarySearch(points, value);
        return found >= 0 ? found : ~found - 1;
    }
}
