namespace SacrificialTape.Tapes;

/// <summary>What is stuck on: foil and adhesive, with or without a facing film.</summary>
public sealed record Tape
{
    /// <summary>Describes a tape.</summary>
    /// <param name="foil">The zinc foil.</param>
    /// <param name="adhesive">The conductive adhesive under it.</param>
    /// <param name="facing">A film over it, if any.</param>
    public Tape(Foil foil, Adhesive adhesive, FacingFilm? facing = null)
    {
        ArgumentNullException.ThrowIfNull(foil);
        ArgumentNullException.ThrowIfNull(adhesive);
        this.Foil = foil;
        this.Adhesive = adhesive;
        this.Facing = facing;
    }

    /// <summary>The zinc foil.</summary>
    public Foil Foil { get; }

    /// <summary>The conductive adhesive.</summary>
    public Adhesive Adhesive { get; }

    /// <summary>The film over the foil, if any.</summary>
    public FacingFilm? Facing { get; }

    /// <summary>Whether a strip conducts to the one under its lap: not over a facing film.</summary>
    public bool ConductsAtLaps => this.Facing is null;
}
