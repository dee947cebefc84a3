using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>
/// Corrosion products slow the loss: D = r t^b up to 20 years, and on the tangent of that curve beyond:
/// D = r [20^b + b 20^(b-1) (t - 20)].
/// </summary>
/// <remarks>
/// Range: rate, time and loss zero or more; a rate of zero never uses anything up. Exponents of the standard are
/// recalled, check before use. For lives under a year it is the shorter of the two laws.
/// </remarks>
public sealed record PowerLawLoss : ILossLaw
{
    private readonly PowerLawTerms terms;

    /// <summary>A power law with an exponent of the user's own.</summary>
    /// <param name="exponent">The exponent b.</param>
    public PowerLawLoss(TimeExponent exponent)
        : this(exponent, string.Create(CultureInfo.InvariantCulture, $"power law, b = {exponent.Value:0.####}"), LossFormulas.PowerForm)
    {
    }

    private PowerLawLoss(TimeExponent exponent, string name, Basis basis)
    {
        this.Exponent = exponent;
        this.Name = name;
        this.Basis = basis;
        this.terms = new PowerLawTerms(exponent.Value);
    }

    /// <summary>Zinc with the mean exponent of the standard, b = 0.813 (recalled, check before use).</summary>
    public static PowerLawLoss ZincMean { get; } =
        new(TimeExponent.FromValue(0.813), "power law, mean exponent", LossFormulas.Power);

    /// <summary>Zinc with the upper exponent of the standard, b = 0.873 (recalled, check before use).</summary>
    public static PowerLawLoss ZincUpper { get; } =
        new(TimeExponent.FromValue(0.873), "power law, upper exponent", LossFormulas.Power);

    /// <summary>Carbon steel with the mean exponent of the standard, b = 0.523 (recalled, check before use).</summary>
    public static PowerLawLoss SteelMean { get; } =
        new(TimeExponent.FromValue(0.523), "power law, steel, mean exponent", LossFormulas.SteelPower);

    /// <summary>Carbon steel with the upper exponent of the standard, b = 0.575 (recalled, check before use).</summary>
    public static PowerLawLoss SteelUpper { get; } =
        new(TimeExponent.FromValue(0.575), "power law, steel, upper exponent", LossFormulas.SteelPower);

    /// <summary>
    /// Hot-dip zinc in soil, n = 0.65 (weakly recalled: an order of size). Its first year is
    /// <see cref="Exposure.FirstYearRate.InSoilByPowerLaw"/>.
    /// </summary>
    public static PowerLawLoss ZincInSoil { get; } =
        new(TimeExponent.FromValue(0.65), "power law in soil, zinc", LossFormulas.SoilConstants);

    /// <summary>Carbon steel in soil, n = 0.80 (weakly recalled: an order of size).</summary>
    public static PowerLawLoss SteelInSoil { get; } =
        new(TimeExponent.FromValue(0.80), "power law in soil, steel", LossFormulas.SoilConstants);

    /// <summary>The exponent b.</summary>
    public TimeExponent Exponent { get; }

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public Basis Basis { get; }

    /// <summary>
    /// Loss in soil, x = K t^n: the form was read, the exponent n and the first year's loss K are the user's own, from
    /// tests in that soil. Constants of the literature, weakly recalled, are in <see cref="ZincInSoil"/>.
    /// </summary>
    /// <param name="exponent">The exponent n.</param>
    public static PowerLawLoss InSoil(TimeExponent exponent) => new(
        exponent,
        string.Create(CultureInfo.InvariantCulture, $"power law in soil, n = {exponent.Value:0.####}"),
        LossFormulas.SoilForm);

    /// <inheritdoc/>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.PowerLoss))]
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.TangentLoss))]
    public Length Loss(CorrosionRate firstYear, Duration time) => Length.FromMicrometers(LossKernel.PowerLossUm(
        firstYear.MicrometersPerYear, LossArguments.Years(time), this.terms));

    /// <inheritdoc/>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.PowerTime))]
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.TangentTime))]
    public Lifetime TimeToLoss(CorrosionRate firstYear, Length loss) => Lifetime.OfYears(LossKernel.PowerYears(
        LossArguments.Micrometers(loss), firstYear.MicrometersPerYear, this.terms, default(NoSteps)));

    /// <inheritdoc/>
    /// <exception cref="ArgumentOutOfRangeException">The time is not above zero: the power law begins infinitely steep.</exception>
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.PowerRate))]
    [BasisOf(typeof(LossFormulas), nameof(LossFormulas.TangentRate))]
    public CorrosionRate RateAt(CorrosionRate firstYear, Duration time) =>
        CorrosionRate.FromMicrometersPerYear(LossKernel.PowerRateUm(
            firstYear.MicrometersPerYear, AcceptedRange.Above(0, "a").Check(LossArguments.Years(time), nameof(time)), this.terms));

    /// <inheritdoc/>
    public Workings ShowTimeToLoss(CorrosionRate firstYear, Length loss)
    {
        var steps = new StepList();
        _ = LossKernel.PowerYears(LossArguments.Micrometers(loss), firstYear.MicrometersPerYear, this.terms, steps);
        return steps.Under("Time to a loss, " + this.Name).RestingOn(this.Basis);
    }

    /// <inheritdoc/>
    public bool Equals(PowerLawLoss? other) =>
        other is not null && this.Exponent == other.Exponent && this.Name == other.Name;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Exponent, this.Name);
}
