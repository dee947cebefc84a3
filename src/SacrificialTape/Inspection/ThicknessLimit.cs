using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>The thickness that a stated share of the foil still has, with a stated confidence, if readings are normal.</summary>
/// <remarks>Coverage and confidence: 0.5 to 0.9999. The limit of few, scattered readings may lie below zero: it then says only that they are too few.</remarks>
public sealed record ThicknessLimit : IHasWorkings
{
    private readonly StoredNumber limitUm;

    /// <summary>Works out the limit.</summary>
    /// <param name="statistics">The readings.</param>
    /// <param name="coverage">The share of the foil that is at least so thick, 0.5 to 0.9999.</param>
    /// <param name="confidence">How surely it is, 0.5 to 0.9999.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ThicknessLimit(ReadingStatistics statistics, Probability coverage, Probability confidence)
    {
        ArgumentNullException.ThrowIfNull(statistics);
        this.Statistics = statistics;
        this.Factor = new ToleranceFactor(statistics.Count, coverage, confidence);
        this.limitUm = new StoredNumber(ToleranceKernel.LimitUm(statistics.MeanUm, statistics.DeviationUm, this.Factor.Value, default(NoSteps)));
    }

    /// <summary>The readings.</summary>
    public ReadingStatistics Statistics { get; }

    /// <summary>The tolerance factor.</summary>
    public ToleranceFactor Factor { get; }

    /// <summary>The limit; below zero when the readings are too few for their scatter.</summary>
    public Length Value => Length.FromMicrometers(this.limitUm.Bare);

    internal double Um => this.limitUm.Bare;

    /// <summary>Holds the limit against the thickness that is required.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="required">Thickness below which the foil counts as used up.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(Length required, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        double wanted = AcceptedRange.AtLeast(0, "um").Check(UnitConversions.Micrometers(required), nameof(required));
        if (WithAllowance.AtMost(this.Um, wanted))
        {
            yield return rules[RuleIds.LimitBelowRequired].State(
                subject, new Measure(this.Um, TradeUnit.Micrometer), new Measure(wanted, TradeUnit.Micrometer));
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        double factor = ToleranceKernel.Factor(this.Statistics.Count, this.Factor.Coverage.Fraction, this.Factor.Confidence.Fraction, steps);
        _ = ToleranceKernel.LimitUm(this.Statistics.MeanUm, this.Statistics.DeviationUm, factor, steps);
        return steps.Under("Lower tolerance limit of the thickness");
    }

    /// <summary>The limit in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{100 * this.Factor.Coverage.Fraction:0.##} % is at least {this.Um:0.##} um, with {100 * this.Factor.Confidence.Fraction:0.##} % confidence");
}
