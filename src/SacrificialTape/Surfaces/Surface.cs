using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A piece of steel to be covered: it knows its area and how that was worked out.</summary>
public abstract record Surface : IHasWorkings
{
    /// <summary>The area to be covered.</summary>
    public abstract Area Area { get; }

    /// <summary>The surface in a few words with its dimensions, for a lay sheet.</summary>
    public abstract string Description { get; }

    /// <inheritdoc/>
    public abstract Workings ShowWorkings();

    /// <summary>The description.</summary>
    public sealed override string ToString() => this.Description;
}
