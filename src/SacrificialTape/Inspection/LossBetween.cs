using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>The rate between two inspections of one place, with its confidence: the short-term rate of readings.</summary>
/// <remarks>
/// Time between: more than 0, at most 1000 a. Confidence: 0.5 to 0.9999, two-sided, by Welch's t, for the two sets need not scatter alike.
/// Losses may come out below zero: then nothing was found to be lost.
/// </remarks>
public sealed record LossBetween : IHasWorkings
{
    private readonly StoredNumber years;
    private readonly StoredNumber leastUm;
    private readonly StoredNumber mostUm;

    /// <summary>Compares two inspections.</summary>
    /// <param name="before">The readings of the inspection before.</param>
    /// <param name="now">The readings of now.</param>
    /// <param name="between">Time between the two.</param>
    /// <param name="confidence">Confidence of the interval, 0.5 to 0.9999.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LossBetween(ReadingStatistics before, ReadingStatistics now, Duration between, Probability confidence)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(now);
        this.Before = before;
        this.Now = now;
        this.Confidence = ToleranceFactor.CheckShare(confidence, nameof(confidence));
        this.years = new StoredNumber(AcceptedRange.AboveUpTo(0, 1000, "a").Check(UnitConversions.Years(between), nameof(between)));
        (double least, double most) = this.Solve(default(NoSteps));
        this.leastUm = new StoredNumber(least);
        this.mostUm = new StoredNumber(most);
    }

    /// <summary>The readings of the inspection before.</summary>
    public ReadingStatistics Before { get; }

    /// <summary>The readings of now.</summary>
    public ReadingStatistics Now { get; }

    /// <summary>Confidence of the interval.</summary>
    public Probability Confidence { get; }

    /// <summary>Time between the two.</summary>
    public Duration Between => UnitConversions.FromYears(this.years.Bare);

    /// <summary>Difference of the means.</summary>
    public Length Loss => Length.FromMicrometers(this.Before.MeanUm - this.Now.MeanUm);

    /// <summary>Least loss within the interval.</summary>
    public Length LeastLoss => Length.FromMicrometers(this.leastUm.Bare);

    /// <summary>Most loss within the interval.</summary>
    public Length MostLoss => Length.FromMicrometers(this.mostUm.Bare);

    /// <summary>Rate of the difference of the means; null when it is below zero.</summary>
    public CorrosionRate? Rate => AsRate(this.RateUm(this.Before.MeanUm - this.Now.MeanUm));

    /// <summary>Highest rate within the interval; null when even that is below zero.</summary>
    public CorrosionRate? HighestRate => AsRate(this.RateUm(this.mostUm.Bare));

    /// <summary>Remaining life of the mean at the rate between; null when it is undetermined.</summary>
    /// <param name="required">Thickness below which the foil counts as used up, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is negative.</exception>
    public Duration? Remaining(Length required) => this.At(required, this.RateUm(this.Before.MeanUm - this.Now.MeanUm));

    /// <summary>Remaining life of the mean at the highest rate within the interval; null when it is undetermined.</summary>
    /// <param name="required">Thickness below which the foil counts as used up, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is negative.</exception>
    public Duration? EarliestRemaining(Length required) => this.At(required, this.RateUm(this.mostUm.Bare));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Loss between two inspections");
    }

    /// <summary>Loss and interval in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Before.MeanUm - this.Now.MeanUm:0.00} um in {this.years.Bare:0.##} a, {this.leastUm.Bare:0.00} to {this.mostUm.Bare:0.00} um with {100 * this.Confidence.Fraction:0.##} % confidence");

    private static CorrosionRate? AsRate(double um) => um < 0 ? null : CorrosionRate.FromMicrometersPerYear(um);

    private double RateUm(double lossUm) => lossUm / this.years.Bare;

    private Duration? At(Length required, double rateUm)
    {
        double wanted = AcceptedRange.AtLeast(0, "um").Check(UnitConversions.Micrometers(required), nameof(required));
        double left = RemainingLifeKernel.ByRate(this.Now.MeanUm, wanted, rateUm, default(NoSteps));
        return double.IsNaN(left) ? null : UnitConversions.FromYears(left);
    }

    private (double Least, double Most) Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => RemainingLifeKernel.LossBetweenUm(
        (this.Before.MeanUm, this.Before.DeviationUm, this.Before.Count),
        (this.Now.MeanUm, this.Now.DeviationUm, this.Now.Count),
        this.Confidence.Fraction,
        steps);
}
