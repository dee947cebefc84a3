using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>How many standard deviations below the mean a one-sided tolerance limit of normal readings lies.</summary>
/// <remarks>
/// <para>Readings: 2 to 10 000. Coverage and confidence: 0.5 to 0.9999. Exact by the non-central t distribution, to some
/// 1e-10; no approximation in closed form is used, since they are poor for few readings.</para>
/// <para>Readings must be independent and roughly normal. Zinc goes unevenly: where single thin spots matter, see
/// <see cref="RankLimit"/> and <see cref="LargestLosses"/>.</para>
/// </remarks>
public sealed record ToleranceFactor : IHasWorkings
{
    internal const int MostReadings = 10_000;

    private readonly StoredNumber value;

    /// <summary>Works out the factor.</summary>
    /// <param name="readings">Number of readings, 2 to 10 000.</param>
    /// <param name="coverage">The share of all thicknesses that lies above the limit, 0.5 to 0.9999.</param>
    /// <param name="confidence">How surely it does, 0.5 to 0.9999.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ToleranceFactor(int readings, Probability coverage, Probability confidence)
    {
        AcceptedRange.Between(2, MostReadings, "readings").Noting("one reading has no scatter").Check(readings);
        this.Readings = readings;
        this.Coverage = CheckShare(coverage, nameof(coverage));
        this.Confidence = CheckShare(confidence, nameof(confidence));
        this.value = new StoredNumber(ToleranceKernel.Factor(readings, coverage.Fraction, confidence.Fraction, default(NoSteps)));
    }

    /// <summary>Number of readings.</summary>
    public int Readings { get; }

    /// <summary>The share of all thicknesses that lies above the limit.</summary>
    public Probability Coverage { get; }

    /// <summary>How surely it does.</summary>
    public Probability Confidence { get; }

    /// <summary>The factor k.</summary>
    public double Value => this.value.Bare;

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = ToleranceKernel.Factor(this.Readings, this.Coverage.Fraction, this.Confidence.Fraction, steps);
        return steps.Under("Tolerance factor");
    }

    /// <summary>The factor in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"k = {this.Value:0.0000} for {this.Readings} readings, coverage {this.Coverage.Fraction:0.####}, confidence {this.Confidence.Fraction:0.####}");

    internal static Probability CheckShare(Probability share, string parameter)
    {
        AcceptedRange.Between(0.5, 0.9999, string.Empty).Noting("a fraction of 1; write 0.95 for 95 %").Check(share.Fraction, parameter);
        return share;
    }
}
