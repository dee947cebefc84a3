using System.Globalization;
using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>Readings held against what was predicted, as first-year rates under one law; and the exposure to estimate with from now on.</summary>
public sealed record PredictionCheck : IHasWorkings
{
    /// <summary>Compares readings with an exposure.</summary>
    /// <param name="measured">What the readings say.</param>
    /// <param name="predicted">The exposure that was estimated with.</param>
    /// <exception cref="ArgumentOutOfRangeException">The highest rate predicted is zero: there is nothing to compare with.</exception>
    public PredictionCheck(RemainingLifeFromReadings measured, ZincExposure predicted)
    {
        ArgumentNullException.ThrowIfNull(measured);
        ArgumentNullException.ThrowIfNull(predicted);
        AcceptedRange.Above(0, "um/a").Check(predicted.FirstYear.Highest.MicrometersPerYear, nameof(predicted));
        this.Measured = measured;
        this.Predicted = predicted;
    }

    /// <summary>Compares readings with the exposure of a life that was estimated.</summary>
    /// <param name="measured">What the readings say.</param>
    /// <param name="predicted">The life that was estimated.</param>
    /// <exception cref="ArgumentOutOfRangeException">The highest rate predicted is zero.</exception>
    public PredictionCheck(RemainingLifeFromReadings measured, LifeEstimate predicted)
        : this(measured, (predicted ?? throw new ArgumentNullException(nameof(predicted))).Exposure)
    {
    }

    /// <summary>What the readings say.</summary>
    public RemainingLifeFromReadings Measured { get; }

    /// <summary>The exposure that was estimated with.</summary>
    public ZincExposure Predicted { get; }

    /// <summary>First-year rate through the mean loss over the highest predicted; zero or below when no loss was found.</summary>
    public double RatioToHighest => RemainingLifeKernel.PredictionRatio(
        this.Measured.MeanRateUm, this.Predicted.FirstYear.Highest.MicrometersPerYear, default(NoSteps));

    /// <summary>How the two ranges stand to each other.</summary>
    public PredictionVerdict Verdict =>
        WithAllowance.Above(this.Measured.LowestRateUm, this.Predicted.FirstYear.Highest.MicrometersPerYear) ? PredictionVerdict.Faster
        : WithAllowance.Below(this.Measured.HighestRateUm, this.Predicted.FirstYear.Lowest.MicrometersPerYear) ? PredictionVerdict.Slower
        : PredictionVerdict.NotContradicted;

    /// <summary>Least loss predicted by now, under the law of the readings.</summary>
    [BasisOf(typeof(RemainingLifeFormulas), nameof(RemainingLifeFormulas.Refit))]
    public Length LeastLossPredicted => this.Measured.Law.Loss(this.Predicted.FirstYear.Lowest, this.Measured.Age);

    /// <summary>Most loss predicted by now, under the law of the readings.</summary>
    [BasisOf(typeof(RemainingLifeFormulas), nameof(RemainingLifeFormulas.Refit))]
    public Length MostLossPredicted => this.Measured.Law.Loss(this.Predicted.FirstYear.Highest, this.Measured.Age);

    /// <summary>An exposure for the next estimate: the first-year rates of the law through the readings, with a basis that says so.</summary>
    /// <param name="note">Where and when the readings were taken.</param>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    /// <exception cref="InvalidOperationException">The readings show no loss: no rate can be told.</exception>
    public ZincExposure Corrected(string note)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(note);
        RateRange range = this.Measured.FirstYearRange
            ?? throw new InvalidOperationException("The readings show no loss, so no rate can be told from them.");
        return ZincExposure.FromMeasurement(range.Lowest, range.Highest, string.Create(
            CultureInfo.InvariantCulture,
            $"from readings: {this.Measured.Statistics.Count} at {UnitConversions.Years(this.Measured.Age):0.##} a, by {this.Measured.Law.Name}; {note}"));
    }

    /// <summary>Says when zinc goes faster than predicted.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.Verdict == PredictionVerdict.Faster)
        {
            yield return rules[RuleIds.FasterThanPredicted].State(
                subject,
                new Measure(this.Measured.MeanRateUm, TradeUnit.MicrometerPerYear),
                new Measure(this.Predicted.FirstYear.Highest.MicrometersPerYear, TradeUnit.MicrometerPerYear));
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = RemainingLifeKernel.PredictionRatio(this.Measured.MeanRateUm, this.Predicted.FirstYear.Highest.MicrometersPerYear, steps);
        return steps.Under("Readings against prediction");
    }

    /// <summary>The comparison in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"measured {this.Measured.MeanRateUm:0.###} um/a ({this.Measured.LowestRateUm:0.###} to {this.Measured.HighestRateUm:0.###}), predicted {this.Predicted.FirstYear}: {this.Verdict}");
}
