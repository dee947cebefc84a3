using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>Constant rates one after the other: so much a year for the first years, another rate after.</summary>
/// <remarks>
/// <para>The law holds a shape. At the first-year rate it was stated with, <see cref="FirstYear"/>, it gives the losses
/// as stated; at another, all rates in proportion.</para>
/// <para>Range: all rates and lengths more than zero; time and loss zero or more. Where two periods meet, the rate is that
/// of the later.</para>
/// </remarks>
public sealed record PiecewiseLoss : ILossLaw
{
    private readonly LossTable table;

    /// <summary>Describes rates one after the other.</summary>
    /// <param name="name">A short name for tables.</param>
    /// <param name="periods">The periods in order, at least one.</param>
    /// <param name="afterwards">The rate after the last of them, more than zero.</param>
    /// <param name="basis">On what the rates rest.</param>
    /// <exception cref="ArgumentException">There is no name or no period.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The last rate is zero.</exception>
    public PiecewiseLoss(string name, IEnumerable<RatePeriod> periods, CorrosionRate afterwards, Basis basis)
    {
        ValueList<RatePeriod> allPeriods = periods.Listed();
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(basis);
        if (allPeriods.Count == 0)
        {
            throw new ArgumentException("Piecewise rates need at least one period; for one rate alone there is the linear law.", nameof(periods));
        }

        AcceptedRange.Above(0, "um/a").Check(afterwards.MicrometersPerYear, nameof(afterwards));
        this.Name = name;
        this.Periods = allPeriods;
        this.Afterwards = afterwards;
        this.Basis = basis;
        this.table = LossTable.OfPeriods(allPeriods, afterwards.MicrometersPerYear);
    }

    /// <summary>
    /// Design loss of zinc in the selected fill of reinforced-soil walls: 0.35 oz/ft2 a year for two years, then 0.09,
    /// which is 15.0 and 3.85 um/a at 7.14 g/cm3. For hot-dip reinforcement, not for tape.
    /// </summary>
    public static PiecewiseLoss ZincInReinforcedSoil { get; } = new(
        "reinforced soil",
        [new RatePeriod(SoilDesign.ZincAtFirst, UnitConversions.FromYears(SoilDesign.FirstYears))],
        SoilDesign.ZincLater,
        ExposureSources.ReinforcedSoil);

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Basis Basis { get; }

    /// <summary>The periods in order.</summary>
    public ValueList<RatePeriod> Periods { get; }

    /// <summary>The rate after the last of them.</summary>
    public CorrosionRate Afterwards { get; }

    /// <summary>What the rates as stated take in the first year.</summary>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.StretchedLoss))]
    public CorrosionRate FirstYear => CorrosionRate.FromMicrometersPerYear(this.table.FirstYearUm);

    /// <inheritdoc/>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.StretchedLoss))]
    public Length Loss(CorrosionRate firstYear, Duration time) => Length.FromMicrometers(
        LossCurveKernel.LossUm(this.table, firstYear.MicrometersPerYear, LossArguments.Years(time)));

    /// <inheritdoc/>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.StraightTime))]
    public Lifetime TimeToLoss(CorrosionRate firstYear, Length loss) => Lifetime.OfYears(LossCurveKernel.Years(
        this.table, LossArguments.Micrometers(loss), firstYear.MicrometersPerYear, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.StretchedRate))]
    public CorrosionRate RateAt(CorrosionRate firstYear, Duration time) => CorrosionRate.FromMicrometersPerYear(
        LossCurveKernel.RateUm(this.table, firstYear.MicrometersPerYear, LossArguments.Years(time)));

    /// <inheritdoc/>
    public Workings ShowTimeToLoss(CorrosionRate firstYear, Length loss)
    {
        var steps = new StepList();
        _ = LossCurveKernel.Years(this.table, LossArguments.Micrometers(loss), firstYear.MicrometersPerYear, steps);
        return steps.Under("Time to a loss, " + this.Name).RestingOn(this.Basis);
    }

    /// <inheritdoc/>
    public bool Equals(PiecewiseLoss? other) =>
        other is not null
        && this.Name == other.Name
        && this.Periods.Equals(other.Periods)
        && this.Afterwards == other.Afterwards
        && this.Basis == other.Basis;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Name, this.Periods, this.Afterwards, this.Basis);
}
