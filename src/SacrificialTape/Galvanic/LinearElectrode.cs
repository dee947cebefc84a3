using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>A metal near its rest potential: i = (E - E_rest) / R_p.</summary>
public sealed record LinearElectrode : Electrode
{
    private readonly ElectrodePotential rest;

    /// <summary>Describes a metal.</summary>
    /// <param name="name">A short name for tables.</param>
    /// <param name="rest">The potential it has alone.</param>
    /// <param name="resistance">Its polarisation resistance.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public LinearElectrode(string name, ElectrodePotential rest, PolarisationResistance resistance)
        : base(name)
    {
        _ = rest.Volts;
        _ = resistance.OhmSquareMeters;
        this.rest = rest;
        this.Resistance = resistance;
    }

    /// <inheritdoc/>
    public override ElectrodePotential? RestPotential => this.rest;

    /// <summary>Its polarisation resistance.</summary>
    public PolarisationResistance Resistance { get; }

    internal double RestCalomel => this.rest.VoltsCalomel;

    internal double OhmM2 => this.Resistance.OhmSquareMeters;

    internal override ElectrodeTerms Under(ThinFilm film) => ElectrodeTerms.Linear(this.RestCalomel, this.OhmM2);
}
