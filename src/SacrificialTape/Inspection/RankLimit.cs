using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>The thickness that a stated share of the foil still has, with a stated confidence, whatever the distribution: one of the readings themselves.</summary>
/// <remarks>
/// Coverage and confidence: 0.5 to 0.9999. The lowest reading is a limit from 29 readings for 90 % with 95 % confidence, from
/// 59 for 95/95 and from 299 for 99/95. With fewer there is none: <see cref="Value"/> is null.
/// </remarks>
public sealed record RankLimit : IHasWorkings
{
    private readonly StoredNumber reached;

    /// <summary>Finds the reading that is the limit.</summary>
    /// <param name="statistics">The readings.</param>
    /// <param name="coverage">The share of the foil that is at least so thick, 0.5 to 0.9999.</param>
    /// <param name="confidence">How surely it is, 0.5 to 0.9999.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public RankLimit(ReadingStatistics statistics, Probability coverage, Probability confidence)
    {
        ArgumentNullException.ThrowIfNull(statistics);
        this.Statistics = statistics;
        this.Coverage = ToleranceFactor.CheckShare(coverage, nameof(coverage));
        this.Confidence = ToleranceFactor.CheckShare(confidence, nameof(confidence));
        (this.Rank, double sure) = ToleranceKernel.Rank(statistics.Count, coverage.Fraction, confidence.Fraction, default(NoSteps));
        this.reached = new StoredNumber(sure);
    }

    /// <summary>The readings.</summary>
    public ReadingStatistics Statistics { get; }

    /// <summary>The share of the foil that is at least so thick.</summary>
    public Probability Coverage { get; }

    /// <summary>How surely it was asked for.</summary>
    public Probability Confidence { get; }

    /// <summary>Which reading from the lowest up it is; 0 when the readings are too few.</summary>
    public int Rank { get; }

    /// <summary>The confidence that this reading has; 0 when there is none.</summary>
    public Probability Reached => Probability.FromFraction(this.reached.Bare);

    /// <summary>The limit; null when the readings are too few.</summary>
    [BasisOf(typeof(ToleranceFormulas), nameof(ToleranceFormulas.RankConfidence))]
    public Length? Value => this.Rank == 0 ? null : this.Statistics.Thicknesses[this.Rank - 1];

    /// <summary>How many readings it takes until the lowest of them is such a limit.</summary>
    /// <param name="coverage">The share of the foil, 0.5 to 0.9999.</param>
    /// <param name="confidence">How surely, 0.5 to 0.9999.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    [BasisOf(typeof(ToleranceFormulas), nameof(ToleranceFormulas.LeastReadings))]
    public static int LeastReadings(Probability coverage, Probability confidence) => (int)ToleranceKernel.LeastReadings(
        ToleranceFactor.CheckShare(coverage, nameof(coverage)).Fraction,
        ToleranceFactor.CheckShare(confidence, nameof(confidence)).Fraction,
        default(NoSteps));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = ToleranceKernel.LeastReadings(this.Coverage.Fraction, this.Confidence.Fraction, steps);
        _ = ToleranceKernel.Rank(this.Statistics.Count, this.Coverage.Fraction, this.Confidence.Fraction, steps);
        return steps.Under("Tolerance limit by rank");
    }

    /// <summary>The limit in a few words.</summary>
    public override string ToString() => this.Rank == 0
        ? string.Create(CultureInfo.InvariantCulture, $"no limit by rank from {this.Statistics.Count} readings: it takes {LeastReadings(this.Coverage, this.Confidence)}")
        : string.Create(CultureInfo.InvariantCulture, $"reading {this.Rank} from below, {this.Statistics.Um(this.Rank - 1):0.##} um, with {100 * this.reached.Bare:0.##} % confidence");
}
