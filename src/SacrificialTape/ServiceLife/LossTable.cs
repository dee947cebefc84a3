namespace SacrificialTape.ServiceLife;

/// <summary>
/// A rising curve of loss in um over years through the origin and given points: straight or cubic between them, straight
/// or nothing beyond. Piecewise rates and measured curves are both such a table.
/// </summary>
internal sealed class LossTable
{
    private LossTable(double[] years, double[] um, double[]? slopes, double? after)
    {
        this.Years = years;
        this.Um = um;
        this.Slopes = slopes;
        this.After = after;
    }

    /// <summary>Times of the points; the first is zero.</summary>
    internal double[] Years { get; }

    /// <summary>Losses at the points; the first is zero.</summary>
    internal double[] Um { get; }

    /// <summary>Slopes at the points, um/a; null where the curve is straight between them.</summary>
    internal double[]? Slopes { get; }

    /// <summary>Slope beyond the last point, um/a; null where the curve ends there.</summary>
    internal double? After { get; }

    /// <summary>Loss after one year: the rate that the curve was made at.</summary>
    internal double FirstYearUm => LossCurveKernel.OwnLossUm(this, 1);

    internal static LossTable OfPeriods(IReadOnlyList<RatePeriod> periods, double after)
    {
        double[] years = new double[periods.Count + 1];
        double[] um = new double[periods.Count + 1];
        for (int i = 0; i < periods.Count; i++)
        {
            years[i + 1] = years[i] + periods[i].Years;
            um[i + 1] = um[i] + (periods[i].Rate.MicrometersPerYear * periods[i].Years);
        }

        return new LossTable(years, um, null, after);
    }

    internal static LossTable OfPoints(IReadOnlyList<LossPoint> points, CurveInterpolation interpolation, CurveEnd end)
    {
        double[] years = [0, .. points.Select(static point => point.Years)];
        double[] um = [0, .. points.Select(static point => point.Um)];
        double[]? slopes = interpolation == CurveInterpolation.MonotoneCubic ? MonotoneSlopes.Of(years, um) : null;
        double chord = (um[^1] - um[^2]) / (years[^1] - years[^2]);
        double? after = end switch
        {
            CurveEnd.Refuse => null,
            CurveEnd.LastChord => chord,
            _ => slopes is null ? chord : slopes[^1],
        };
        return new LossTable(years, um, slopes, after);
    }
}
