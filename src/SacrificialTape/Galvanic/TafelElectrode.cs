using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>
/// A metal that dissolves by Tafel's law while oxygen is reduced on it, by Tafel's law in series with the supply of
/// oxygen: i = i_corr 10^(n/b_a) - 1/(1/i_L + 1/i_act), n = E - E_rest.
/// </summary>
/// <remarks>
/// Both sides are the corrosion current at the rest potential. Corrosion current: more than 0, and below what oxygen can
/// reach the metal. Slopes: 0.01 to 1 V for each tenfold current.
/// </remarks>
public sealed record TafelElectrode : Electrode
{
    private static readonly AcceptedRange AcceptedSlope = AcceptedRange.Between(0.01, 1, "V").Noting("for each tenfold current");

    private readonly ElectrodePotential rest;
    private readonly StoredNumber corrosion;
    private readonly StoredNumber anodic;
    private readonly StoredNumber cathodic;

    /// <summary>Describes a metal.</summary>
    /// <param name="name">A short name for tables.</param>
    /// <param name="rest">The potential it has alone.</param>
    /// <param name="corrosionCurrent">The current density of its own corrosion.</param>
    /// <param name="anodicSlope">Potential for each tenfold dissolution.</param>
    /// <param name="cathodicSlope">Potential for each tenfold reduction of oxygen.</param>
    /// <param name="supply">How much oxygen reaches it.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TafelElectrode(
        string name,
        ElectrodePotential rest,
        ElectricCurrentDensity corrosionCurrent,
        ElectricPotential anodicSlope,
        ElectricPotential cathodicSlope,
        OxygenSupply supply)
        : base(name)
    {
        ArgumentNullException.ThrowIfNull(supply);
        _ = rest.Volts;
        this.rest = rest;
        double own = AcceptedRange.Above(0, "A/m2").Check(UnitConversions.AmperesPerSquareMeter(corrosionCurrent), nameof(corrosionCurrent));
        this.corrosion = new StoredNumber(own);
        this.anodic = new StoredNumber(AcceptedSlope.Check(UnitConversions.Volts(anodicSlope), nameof(anodicSlope)));
        this.cathodic = new StoredNumber(AcceptedSlope.Check(UnitConversions.Volts(cathodicSlope), nameof(cathodicSlope)));
        this.Supply = supply;
    }

    /// <inheritdoc/>
    public override ElectrodePotential? RestPotential => this.rest;

    /// <summary>The current density of its own corrosion.</summary>
    public ElectricCurrentDensity CorrosionCurrent => ElectricCurrentDensity.FromAmperesPerSquareMeter(this.corrosion.Bare);

    /// <summary>Potential for each tenfold dissolution.</summary>
    public ElectricPotential AnodicSlope => ElectricPotential.FromVolts(this.anodic.Bare);

    /// <summary>Potential for each tenfold reduction of oxygen.</summary>
    public ElectricPotential CathodicSlope => ElectricPotential.FromVolts(this.cathodic.Bare);

    /// <summary>How much oxygen reaches it.</summary>
    public OxygenSupply Supply { get; }

    /// <summary>Its polarisation resistance at rest under a film: what a linear model of it would take.</summary>
    /// <param name="film">The film.</param>
    /// <exception cref="ArgumentOutOfRangeException">More corrosion than oxygen reaches the metal.</exception>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.RestResistance))]
    public PolarisationResistance ResistanceAtRest(ThinFilm film)
    {
        ArgumentNullException.ThrowIfNull(film);
        return PolarisationResistance.FromOhmSquareMeters(ReachKernel.RestResistance(
            this.corrosion.Bare, this.anodic.Bare, this.cathodic.Bare, this.CheckedLimit(film)));
    }

    /// <summary>Name and current in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Name}, {this.corrosion.Bare:0.######} A/m2 at {this.rest}");

    internal override ElectrodeTerms Under(ThinFilm film) => ElectrodeTerms.Tafel(
        this.rest.VoltsCalomel, this.corrosion.Bare, this.anodic.Bare, this.cathodic.Bare, this.CheckedLimit(film));

    private double CheckedLimit(ThinFilm film)
    {
        double limit = this.Supply.LimitUnder(film);
        if (!double.IsPositiveInfinity(limit))
        {
            AcceptedRange.Above(this.corrosion.Bare, "A/m2").Noting($"the corrosion current of {this.Name}, which this oxygen has to feed").Check(limit, "supply");
        }

        return limit;
    }
}
