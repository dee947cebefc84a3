using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Surfaces;

/// <summary>Washers cut from a strip, in doubles. Middles lie at least p = D + g apart.</summary>
internal static class WasherKernel
{
    /// <summary>The better of straight and staggered rows; straight ones when both give as many, then the fewer rows.</summary>
    internal static WasherLayout Best(double washerMm, double gapMm, double widthMm, double lengthMm)
    {
        WasherLayout best = Straight(washerMm, gapMm, widthMm, lengthMm, default(NoSteps));

        // Rows two apart stand at the same place along the strip, so they must lie one washer apart; two rows need not.
        int most = Math.Max(2, 1 + (int)WithAllowance.Floor(2 * (widthMm - washerMm) / (washerMm + gapMm)));
        for (int rows = 2; rows <= most; rows++)
        {
            WasherLayout layout = Staggered(washerMm, gapMm, widthMm, lengthMm, rows, default(NoSteps));
            best = layout.Count > best.Count ? layout : best;
        }

        return best;
    }

    internal static WasherLayout Straight<TSteps>(double washerMm, double gapMm, double widthMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double step = washerMm + gapMm;
        double rows = WithAllowance.Floor((widthMm + gapMm) / step);
        double each = WithAllowance.Floor((lengthMm + gapMm) / step);
        if (TSteps.Records)
        {
            steps.Add(WasherFormulas.StraightRows, [widthMm, gapMm, washerMm], rows);
            steps.Add(WasherFormulas.StraightEach, [lengthMm, gapMm, washerMm], each);
            steps.Add(WasherFormulas.StraightCount, [rows, each], rows * each);
        }

        return new(WasherRows.Straight, (int)rows, new StoredNumber(step), new StoredNumber(step), (long)(rows * each));
    }

    /// <summary>Rows as far apart as the strip is wide; the step lets neighbours in the next row keep their distance.</summary>
    internal static WasherLayout Staggered<TSteps>(
        double washerMm, double gapMm, double widthMm, double lengthMm, int rows, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double apart = washerMm + gapMm;
        double rowDistance = (widthMm - washerMm) / (rows - 1);
        double step = Math.Max(apart, 2 * Math.Sqrt(Math.Max(0, (apart * apart) - (rowDistance * rowDistance))));
        double first = WithAllowance.Floor((lengthMm - washerMm) / step) + 1;
        double second = WithAllowance.Floor((lengthMm - washerMm - (step / 2)) / step) + 1;
        double count = (WithAllowance.Ceiling(rows / 2.0) * first) + (WithAllowance.Floor(rows / 2.0) * second);
        if (TSteps.Records)
        {
            steps.Add(WasherFormulas.RowDistance, [widthMm, washerMm, rows], rowDistance);
            steps.Add(WasherFormulas.Step, [washerMm, gapMm, rowDistance], step);
            steps.Add(WasherFormulas.FirstRow, [lengthMm, washerMm, step], first);
            steps.Add(WasherFormulas.SecondRow, [lengthMm, washerMm, step], second);
            steps.Add(WasherFormulas.StaggeredCount, [rows, first, second], count);
        }

        return new(WasherRows.Staggered, rows, new StoredNumber(rowDistance), new StoredNumber(step), (long)count);
    }

    /// <summary>Area of the washers over that of the strip.</summary>
    internal static double Yield<TSteps>(
        double count, double outsideMm, double insideMm, double widthMm, double lengthMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double yield = count * Math.PI / 4 * (outsideMm - insideMm) * (outsideMm + insideMm) / (widthMm * lengthMm);
        if (TSteps.Records)
        {
            steps.Add(WasherFormulas.Yield, [count, outsideMm, insideMm, widthMm, lengthMm], yield);
        }

        return yield;
    }
}
