using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>Foil and layers for a life that is to be reached with a confidence: the inverse of <see cref="LifeDistribution"/>.</summary>
/// <example><code source="LifeWithUncertaintyPage.cs" region="design" /></example>
public sealed record LifeDesign
{
    private const double ThinnestUm = 5;
    private const double ThickestUm = 2000;

    private readonly double wanted;

    /// <summary>Describes what is wanted.</summary>
    /// <param name="uncertainty">What is not known for certain.</param>
    /// <param name="required">The life, more than zero and not unlimited.</param>
    /// <param name="confidence">How surely it is to be reached, from 0.000001 to 0.999999.</param>
    /// <exception cref="ArgumentOutOfRangeException">Life or confidence is outside its range.</exception>
    public LifeDesign(LifeUncertainty uncertainty, Lifetime required, Probability confidence)
    {
        ArgumentNullException.ThrowIfNull(uncertainty);
        AcceptedRange.Above(0, "a").Check(required.Years, nameof(required));
        this.wanted = LifeDistribution.Confidence(confidence);
        this.Required = required;
        this.Confidence = confidence;
        this.Uncertainty = uncertainty;
    }

    /// <summary>The life.</summary>
    public Lifetime Required { get; }

    /// <summary>How surely it is to be reached.</summary>
    public Probability Confidence { get; }

    /// <summary>What is not known for certain.</summary>
    public LifeUncertainty Uncertainty { get; }

    /// <summary>The least nominal thickness that will do.</summary>
    /// <param name="layersEverywhere">Layers over any spot, 1 to 100.</param>
    /// <param name="tolerance">Tolerance of the foil, zero or more.</param>
    /// <returns>Null when no foil up to 2 mm will do. Never less than 5 um, the thinnest foil there is here.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Layers or tolerance are outside their range.</exception>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.Inverse))]
    public Length? LeastThickness(int layersEverywhere, Length tolerance)
    {
        AcceptedRange.Between(1, LifeEstimate.MostLayers, "layers").Check(layersEverywhere);
        double less = AcceptedRange.FromBelow(0, ThickestUm, "um").Check(UnitConversions.Micrometers(tolerance), nameof(tolerance));
        double Surplus(double logUm) =>
            new LifeSpread(Math.Exp(logUm), less, this.Uncertainty).Reached(this.Required.Years, layersEverywhere - 1, 1) - this.wanted;

        // Foil must be thicker than its tolerance.
        double low = Math.Log(Math.Max(ThinnestUm, 1.001 * less));
        double high = Math.Log(ThickestUm);
        return low >= high || Surplus(high) < 0 ? null
            : Surplus(low) >= 0 ? Length.FromMicrometers(Math.Exp(low))
            : Length.FromMicrometers(Math.Exp(BracketedRoot.Find(Surplus, low, high, 1e-13)));
    }

    /// <summary>The least number of layers of a foil that will do.</summary>
    /// <param name="foil">The foil.</param>
    /// <returns>Null when 100 layers will not do.</returns>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.LeastLayers))]
    public int? LeastLayers(Foil foil)
    {
        double layers = SpreadKernel.LeastLayers(this.Required.Years, this.OneLayer(foil).Years);
        return layers <= LifeEstimate.MostLayers ? (int)layers : null;
    }

    /// <summary>What one more layer of a foil adds to the life with the confidence: as much whichever layer it is.</summary>
    /// <param name="foil">The foil.</param>
    [BasisOf(typeof(SpreadFormulas), nameof(SpreadFormulas.Inverse))]
    public Lifetime OneLayer(Foil foil) => new LifeDistribution(foil, 1, this.Uncertainty).ReachedWith(this.Confidence);

    /// <summary>The thinnest of the foils in stock that will do.</summary>
    /// <param name="stocked">Foils in any order.</param>
    /// <param name="layersEverywhere">Layers over any spot, 1 to 100.</param>
    /// <returns>Null when none will do.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number of layers is outside its range.</exception>
    public Foil? ThinnestOf(IEnumerable<Foil> stocked, int layersEverywhere)
    {
        AcceptedRange.Between(1, LifeEstimate.MostLayers, "layers").Check(layersEverywhere);
        return stocked.Listed()
            .Where(foil => WithAllowance.AtLeast(
                new LifeDistribution(foil, layersEverywhere, this.Uncertainty).ChanceOf(this.Required).Fraction, this.wanted))
            .MinBy(static foil => foil.ThicknessMm);
    }

    /// <inheritdoc/>
    public bool Equals(LifeDesign? other) => other is not null
        && this.Required == other.Required && this.Confidence == other.Confidence && this.Uncertainty == other.Uncertainty;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.Required, this.Confidence, this.Uncertainty);
}
