namespace SacrificialTape.Tests.ServiceLife;

/// <summary>A first-year rate, steps of time and of loss from point to point, and a place on the curve as a share of it.</summary>
public sealed record CurveCase(double Rate, IReadOnlyList<(double Years, double Um)> Steps, double Share)
{
    internal double LastYear => this.Steps.Sum(static step => step.Years);

    internal ValueList<LossPoint> Points()
    {
        double years = 0;
        double um = 0;
        return new ValueList<LossPoint>(this.Steps.Select(step =>
        {
            years += step.Years;
            um += step.Um;
            return new LossPoint(Duration.FromYears365(years), Length.FromMicrometers(um));
        }).ToArray());
    }

    internal PiecewiseLoss Piecewise() => new(
        "made up",
        new ValueList<RatePeriod>(this.Steps.Select(static step =>
            new RatePeriod(CorrosionRate.FromMicrometersPerYear(step.Um / step.Years), Duration.FromYears365(step.Years))).ToArray()),
        CorrosionRate.FromMicrometersPerYear(this.Steps[^1].Um / this.Steps[^1].Years),
        Basis.OwnExperience("invented"));

    internal MeasuredLoss Measured(CurveInterpolation interpolation, CurveEnd end) =>
        new(this.Points(), interpolation, end, Basis.OwnExperience("invented"));

    internal ILossLaw[] Laws() =>
    [
        this.Piecewise(),
        this.Measured(CurveInterpolation.Linear, CurveEnd.EndTangent),
        this.Measured(CurveInterpolation.MonotoneCubic, CurveEnd.LastChord),
    ];
}
