using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Exposure;

/// <summary>The rate from the mass that a coupon lost, r = K W / (A T D).</summary>
/// <remarks>
/// <para>The mass lost is that of the metal: weigh before, clean the corrosion products off by a method that spares the
/// metal, weigh again, and take off what the cleaning itself removes. The area is all that was exposed: both faces and the
/// edges of a hanging plate.</para>
/// <para>Range: mass zero or more; area, time and density more than zero. A rate over more or less than a year is not
/// that of the first year; using it as such leaves a finding.</para>
/// </remarks>
public sealed record CouponLoss : IHasWorkings
{
    private readonly StoredNumber grams;
    private readonly StoredNumber squareCm;
    private readonly StoredNumber hours;
    private readonly StoredNumber gramsPerCubicCm;

    /// <summary>Describes what became of a coupon.</summary>
    /// <param name="massLost">Mass of metal lost, zero or more.</param>
    /// <param name="area">Area exposed, more than zero.</param>
    /// <param name="time">Time exposed, more than zero.</param>
    /// <param name="density">Density of the metal, more than zero.</param>
    /// <param name="uncertainty">How well mass and area are known, if that is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public CouponLoss(Mass massLost, Area area, Duration time, Density density, CouponUncertainty? uncertainty = null)
    {
        this.grams = new StoredNumber(AcceptedRange.AtLeast(0, "g").Check(UnitConversions.Grams(massLost), nameof(massLost)));
        this.squareCm = new StoredNumber(AcceptedRange.Above(0, "cm2").Check(UnitConversions.SquareCentimeters(area), nameof(area)));
        this.hours = new StoredNumber(AcceptedRange.Above(0, "h").Check(UnitConversions.Hours(time), nameof(time)));
        this.gramsPerCubicCm = new StoredNumber(
            AcceptedRange.Above(0, "g/cm3").Check(UnitConversions.KilogramsPerCubicMeter(density) / 1000, nameof(density)));
        this.Uncertainty = uncertainty;
    }

    /// <summary>Mass of metal lost.</summary>
    public Mass MassLost => Mass.FromGrams(this.grams.Bare);

    /// <summary>Area exposed.</summary>
    public Area Area => Area.FromSquareCentimeters(this.squareCm.Bare);

    /// <summary>Time exposed.</summary>
    public Duration Time => Duration.FromHours(this.hours.Bare);

    /// <summary>Density of the metal.</summary>
    public Density Density => Density.FromGramsPerCubicCentimeter(this.gramsPerCubicCm.Bare);

    /// <summary>How well mass and area are known, if that was said.</summary>
    public CouponUncertainty? Uncertainty { get; }

    /// <summary>Thickness lost per year, mean over the time.</summary>
    public CorrosionRate Rate => CorrosionRate.FromMicrometersPerYear(this.RateUm(default(NoSteps)));

    /// <summary>Mass lost per area and year, mean over the time: the unit that was measured, to classify by.</summary>
    public MassLossRate MassRate => MassLossRate.FromGramsPerSquareMeterYear(
        ExposureKernel.CouponMass(this.grams.Bare, this.squareCm.Bare, this.hours.Bare, default(NoSteps)));

    /// <summary>Standard uncertainty of the rate; null when nothing was said of mass and area.</summary>
    public CorrosionRate? StandardUncertainty =>
        this.UncertaintyUm(default(NoSteps)) is { } value ? CorrosionRate.FromMicrometersPerYear(value) : null;

    /// <summary>The rate give or take two standard uncertainties, never below zero; the bare rate when nothing was said of them.</summary>
    public RateRange Range => this.Uncertainty is null ? new RateRange(this.Rate, this.Rate) : ExposureKernel.CouponRange(
        this.RateUm(default(NoSteps)), this.UncertaintyUm(default(NoSteps))!.Value, default(NoSteps));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = ExposureKernel.CouponMass(this.grams.Bare, this.squareCm.Bare, this.hours.Bare, steps);
        double rate = this.RateUm(steps);
        if (this.UncertaintyUm(steps) is { } uncertainty)
        {
            _ = ExposureKernel.CouponRange(rate, uncertainty, steps);
        }

        return steps.Under("Rate from the mass that a coupon lost");
    }

    /// <summary>Loss, area and time in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.grams.Bare:0.######} g lost from {this.squareCm.Bare:0.######} cm2 in {this.hours.Bare:0.###} h");

    private double RateUm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        ExposureKernel.CouponRate(this.grams.Bare, this.squareCm.Bare, this.hours.Bare, this.gramsPerCubicCm.Bare, steps);

    private double? UncertaintyUm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => this.Uncertainty is null ? null : ExposureKernel.CouponUncertainty(
            this.grams.Bare,
            this.squareCm.Bare,
            this.hours.Bare,
            this.gramsPerCubicCm.Bare,
            this.Uncertainty.Grams,
            this.Uncertainty.SquareCm,
            steps);
}
