using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>The most cathodic current that dissolved oxygen can carry through a still film: 4 F D c / d.</summary>
/// <remarks>
/// An upper bound while the surface is wet: rust, zinc's corrosion products and dry time cut it. It says how far
/// protection can fail to reach, not how long zinc lasts. Film: more than 0, at most 1000 um.
/// </remarks>
public sealed record OxygenLimit : IHasWorkings
{
    private readonly StoredNumber filmUm;

    /// <summary>Describes the limit under a film.</summary>
    /// <param name="filmThickness">Thickness of the film.</param>
    /// <exception cref="ArgumentOutOfRangeException">The film is outside its range.</exception>
    public OxygenLimit(Length filmThickness) => this.filmUm = new StoredNumber(
        AcceptedRange.AboveUpTo(0, ThinFilm.ThickestUm, "um").Check(UnitConversions.Micrometers(filmThickness), nameof(filmThickness)));

    /// <summary>Thickness of the film.</summary>
    public Length Film => Length.FromMicrometers(this.filmUm.Bare);

    /// <summary>The limit.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.OxygenLimit))]
    public ElectricCurrentDensity Limit => ElectricCurrentDensity.FromAmperesPerSquareMeter(
        GalvanicKernel.OxygenLimit(this.filmUm.Bare, default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = GalvanicKernel.OxygenLimit(this.filmUm.Bare, steps);
        return steps.Under("Oxygen through a still film");
    }

    /// <summary>The film in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"oxygen through a film of {this.filmUm.Bare:0.###} um");
}
