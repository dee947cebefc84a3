namespace SacrificialTape.Surfaces;

/// <summary>A piece of a meridian that one formula describes, from its low end toward the crown. Lengths in mm.</summary>
internal abstract class MeridianSegment
{
    /// <summary>Length along the steel.</summary>
    internal abstract double LengthMm { get; }

    /// <summary>Straight in section: a cylinder, a cone or a disc.</summary>
    internal virtual bool IsStraight => false;

    /// <summary>The spot at a distance along the segment.</summary>
    internal abstract MeridianPoint At(double alongMm);

    /// <summary>Area turned by the segment as far as a distance along it, in mm2.</summary>
    internal abstract double AreaTo(double alongMm);
}
