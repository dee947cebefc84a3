namespace SacrificialTape.Surfaces;

/// <summary>A straight piece of a meridian: a cylinder or a cone.</summary>
internal sealed class MeridianLine(double radiusMm, double slope, double lengthMm) : MeridianSegment
{
    internal override double LengthMm => lengthMm;

    internal override bool IsStraight => true;

    internal override MeridianPoint At(double alongMm) => new(Math.Max(0, radiusMm - (slope * alongMm)), slope, 0);

    internal override double AreaTo(double alongMm) => 2 * Math.PI * alongMm * (radiusMm - (slope * alongMm / 2));
}
