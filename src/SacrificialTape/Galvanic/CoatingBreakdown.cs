using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>The bare share of a painted surface over a life: f = a + b t, and never more than all of it.</summary>
/// <remarks>Life: more than 0. Once the surface would be more than bare, the mean is that of the curve with its flat end.</remarks>
public sealed record CoatingBreakdown : IHasWorkings
{
    private readonly StoredNumber years;

    /// <summary>Describes the breakdown over a life.</summary>
    /// <param name="constants">Bare share at the start and more each year.</param>
    /// <param name="life">The life.</param>
    /// <exception cref="ArgumentOutOfRangeException">The life is not positive.</exception>
    public CoatingBreakdown(BreakdownConstants constants, Duration life)
    {
        ArgumentNullException.ThrowIfNull(constants);
        this.Constants = constants;
        this.years = new StoredNumber(AcceptedRange.Above(0, "a").Check(UnitConversions.Years(life), nameof(life)));
    }

    /// <summary>Bare share at the start and more each year.</summary>
    public BreakdownConstants Constants { get; }

    /// <summary>The life.</summary>
    public Duration Life => UnitConversions.FromYears(this.years.Bare);

    /// <summary>At the start.</summary>
    public double Initial => this.Constants.Initial;

    /// <summary>On the mean of the life: what the mass of anodes is made for.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.MeanBreakdown))]
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.MeanBreakdownCapped))]
    public double Mean => GalvanicKernel.MeanBreakdown(this.Constants.Initial, this.Constants.Yearly, this.years.Bare, default(NoSteps));

    /// <summary>At the end.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.FinalBreakdown))]
    public double Final => GalvanicKernel.FinalBreakdown(this.Constants.Initial, this.Constants.Yearly, this.years.Bare, default(NoSteps));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = GalvanicKernel.MeanBreakdown(this.Constants.Initial, this.Constants.Yearly, this.years.Bare, steps);
        _ = GalvanicKernel.FinalBreakdown(this.Constants.Initial, this.Constants.Yearly, this.years.Bare, steps);
        return steps.Under("Coating breakdown, " + this.Constants.Name);
    }

    /// <summary>Constants and life in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Constants}, {this.years.Bare:0.###} a");
}
