using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>A measured curve: points of time and loss, and a rising curve through them from zero.</summary>
/// <remarks>
/// <para>The law holds a shape. At the first-year rate it was measured with, <see cref="FirstYear"/>, it gives the losses
/// as measured; at another, all losses in proportion.</para>
/// <para>Range: times and losses rise strictly; the last point lies at a year or later; two points at least for the cubic.
/// Beyond the last point the curve refuses, unless told how to go on, and then a life that gets there leaves a finding.</para>
/// </remarks>
public sealed record MeasuredLoss : IJudgedLossLaw
{
    private readonly LossTable table;

    /// <summary>Draws a curve through measured points.</summary>
    /// <param name="points">The points in order of time.</param>
    /// <param name="interpolation">How it runs between them.</param>
    /// <param name="end">What it says beyond the last.</param>
    /// <param name="basis">What was measured, where and when.</param>
    /// <exception cref="ArgumentException">
    /// Too few points, points that do not rise, a last point before a year, or an end tangent that is flat.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">Not an interpolation or an end.</exception>
    public MeasuredLoss(IEnumerable<LossPoint> points, CurveInterpolation interpolation, CurveEnd end, Basis basis)
    {
        ValueList<LossPoint> allPoints = points.Listed();
        ArgumentNullException.ThrowIfNull(basis);
        if (!Enum.IsDefined(interpolation))
        {
            throw new ArgumentOutOfRangeException(nameof(interpolation), interpolation, "Linear or MonotoneCubic.");
        }

        if (!Enum.IsDefined(end))
        {
            throw new ArgumentOutOfRangeException(nameof(end), end, "Refuse, EndTangent or LastChord.");
        }

        CheckPoints(allPoints, interpolation);
        this.Points = allPoints;
        this.Interpolation = interpolation;
        this.End = end;
        this.Basis = basis;
        this.table = LossTable.OfPoints(allPoints, interpolation, end);
        if (this.table.After is 0)
        {
            throw new ArgumentException(
                "The curve is flat at its last point, so its tangent would make a life without end. Choose the last chord, or measure longer.", nameof(end));
        }
    }

    /// <inheritdoc/>
    public string Name => this.Interpolation == CurveInterpolation.Linear ? "measured curve, straight" : "measured curve, monotone cubic";

    /// <inheritdoc/>
    public Basis Basis { get; }

    /// <summary>The points in order of time.</summary>
    public ValueList<LossPoint> Points { get; }

    /// <summary>How the curve runs between its points.</summary>
    public CurveInterpolation Interpolation { get; }

    /// <summary>What the curve says beyond its last point.</summary>
    public CurveEnd End { get; }

    /// <summary>What the curve as measured loses in the first year.</summary>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.CubicLoss))]
    public CorrosionRate FirstYear => CorrosionRate.FromMicrometersPerYear(this.table.FirstYearUm);

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The time lies beyond the last point of a curve that refuses there.</exception>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.StretchedLoss))]
    public Length Loss(CorrosionRate firstYear, Duration time) => Length.FromMicrometers(
        LossCurveKernel.LossUm(this.table, firstYear.MicrometersPerYear, this.Years(time)));

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The loss lies beyond the last point of a curve that refuses there.</exception>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.CubicTime))]
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.StraightTime))]
    public Lifetime TimeToLoss(CorrosionRate firstYear, Length loss) => Lifetime.OfYears(LossCurveKernel.Years(
        this.table, this.Micrometers(loss, firstYear), firstYear.MicrometersPerYear, default(NoSteps)));

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The time lies beyond the last point of a curve that refuses there.</exception>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.StretchedRate))]
    public CorrosionRate RateAt(CorrosionRate firstYear, Duration time) => CorrosionRate.FromMicrometersPerYear(
        LossCurveKernel.RateUm(this.table, firstYear.MicrometersPerYear, this.Years(time)));

    /// <inheritdoc/>
    public Workings ShowTimeToLoss(CorrosionRate firstYear, Length loss)
    {
        var steps = new StepList();
        _ = LossCurveKernel.Years(this.table, this.Micrometers(loss, firstYear), firstYear.MicrometersPerYear, steps);
        return steps.Under("Time to a loss, " + this.Name).RestingOn(this.Basis);
    }

    /// <inheritdoc/>
    public IEnumerable<Finding> Judge(Lifetime longest, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        double last = this.table.Years[^1];
        if (longest.IsUnlimited || WithAllowance.Above(longest.Years, last))
        {
            Measure? reached = longest.IsUnlimited ? null : new Measure(longest.Years, TradeUnit.Year);
            yield return rules[RuleIds.LossCurveExtrapolated].State(subject, reached, new Measure(last, TradeUnit.Year));
        }
    }

    /// <inheritdoc/>
    public bool Equals(MeasuredLoss? other) =>
        other is not null
        && this.Points.Equals(other.Points)
        && this.Interpolation == other.Interpolation
        && this.End == other.End
        && this.Basis == other.Basis;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Points, this.Interpolation, this.End, this.Basis);

    private static void CheckPoints(ValueList<LossPoint> points, CurveInterpolation interpolation)
    {
        int fewest = interpolation == CurveInterpolation.Linear ? 1 : 2;
        if (points.Count < fewest)
        {
            throw new ArgumentException($"The curve needs at least {fewest} point(s); {points.Count} given.", nameof(points));
        }

        for (int i = 1; i < points.Count; i++)
        {
            if (points[i].Years <= points[i - 1].Years || points[i].Um <= points[i - 1].Um)
            {
                throw new ArgumentException(
                    FormattableString.Invariant($"Times and losses must rise from point to point; point {i + 1} does not rise above the one before."), nameof(points));
            }
        }

        AcceptedRange.AtLeast(1, "a").Noting("the time of the last point: the shape is measured by its first year").Check(points[^1].Years, nameof(points));
    }

    private double Years(Duration time)
    {
        double years = LossArguments.Years(time);
        return this.End == CurveEnd.Refuse
            ? AcceptedRange.Between(0, this.table.Years[^1], "a").Noting("the last point of the curve").Check(years, nameof(time))
            : years;
    }

    private double Micrometers(Length loss, CorrosionRate firstYear)
    {
        double um = LossArguments.Micrometers(loss);
        double rate = firstYear.MicrometersPerYear;
        return this.End == CurveEnd.Refuse && rate > 0
            ? AcceptedRange.Between(0, LossCurveKernel.LossUm(this.table, rate, this.table.Years[^1]), "um")
                .Noting("the last point of the curve").Check(um, nameof(loss))
            : um;
    }
}
