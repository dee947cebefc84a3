namespace SacrificialTape.Galvanic;

/// <summary>A surface under a film: what current it gives or takes at a potential.</summary>
public abstract record Electrode
{
    private protected Electrode(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        this.Name = name;
    }

    /// <summary>A short name for tables.</summary>
    public string Name { get; }

    /// <summary>The potential it has alone; null for a surface that takes no part.</summary>
    public abstract ElectrodePotential? RestPotential { get; }

    /// <summary>How much current it gives at a potential under a film; positive where metal is lost.</summary>
    /// <param name="film">The film.</param>
    /// <param name="potential">The potential.</param>
    [Provenance.BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.LinearCurrent))]
    [Provenance.BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.TafelCurrent))]
    public UnitsNet.ElectricCurrentDensity CurrentAt(ThinFilm film, ElectrodePotential potential)
    {
        ArgumentNullException.ThrowIfNull(film);
        return UnitsNet.ElectricCurrentDensity.FromAmperesPerSquareMeter(this.Under(film).Current(potential.VoltsCalomel));
    }

    internal abstract ElectrodeTerms Under(ThinFilm film);
}
