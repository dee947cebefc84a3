namespace SacrificialTape.Galvanic;

/// <summary>A surface that gives and takes no current: paint, a facing film, adhesive that was pressed out.</summary>
public sealed record InertSurface : Electrode
{
    /// <summary>Describes an inert surface.</summary>
    /// <param name="name">A short name for tables.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public InertSurface(string name)
        : base(name)
    {
    }

    /// <inheritdoc/>
    public override ElectrodePotential? RestPotential => null;

    internal override ElectrodeTerms Under(ThinFilm film) => ElectrodeTerms.Inert;
}
