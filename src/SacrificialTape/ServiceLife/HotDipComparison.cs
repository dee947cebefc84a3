using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>A tape beside hot-dip zinc under the same exposure and the same growth of loss.</summary>
/// <remarks>It compares amounts of zinc by one law. It does not say that foil on adhesive behaves like a hot-dip coating.</remarks>
public sealed record HotDipComparison
{
    /// <summary>Compares at a confidence.</summary>
    /// <param name="tape">The life of the tape, at least one layer.</param>
    /// <param name="coating">The coating.</param>
    /// <param name="confidence">From 0.000001 to 0.999999.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tape has no layer, or the confidence is outside its range.</exception>
    public HotDipComparison(LifeDistribution tape, HotDipCoating coating, Probability confidence)
    {
        ArgumentNullException.ThrowIfNull(tape);
        ArgumentNullException.ThrowIfNull(coating);
        AcceptedRange.AtLeast(1, "layers").Check(tape.LayersEverywhere, nameof(tape));
        LifeDistribution.Confidence(confidence);
        this.Tape = tape;
        this.Coating = coating;
        this.Confidence = confidence;
    }

    /// <summary>The life of the tape with its uncertainty.</summary>
    public LifeDistribution Tape { get; }

    /// <summary>The coating.</summary>
    public HotDipCoating Coating { get; }

    /// <summary>The confidence of both lives.</summary>
    public Probability Confidence { get; }

    /// <summary>The life that the tape reaches.</summary>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.Inverse))]
    public Lifetime TapeLife => this.Tape.ReachedWith(this.Confidence);

    /// <summary>The life that the coating reaches, to its last zinc.</summary>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.Inverse))]
    public Lifetime CoatingLife => Lifetime.OfYears(this.Alone.Years(this.Confidence.Fraction, 0, 1));

    /// <summary>Hot-dip zinc that lasts as long as the tape.</summary>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.Inverse))]
    public Length EqualCoating => Length.FromMicrometers(
        this.Alone.ZincUm(this.TapeLife.Years, this.Confidence.Fraction));

    private LifeSpread Alone => LifeSpread.OfCoating(this.Coating.Um, this.Tape.Uncertainty);

    /// <summary>Both in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"tape {this.TapeLife}, {this.Coating} {this.CoatingLife} at {this.Confidence}");
}
