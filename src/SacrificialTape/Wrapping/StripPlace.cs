using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Where a piece of strip lies on a flat face, measured from the middle of the face.</summary>
internal sealed record StripPlace
{
    private readonly StoredNumber beginMm;
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber lowerEdgeMm;

    internal StripPlace(double beginMm, double endMm, double lowerEdgeMm)
    {
        this.beginMm = new StoredNumber(beginMm);
        this.lengthMm = new StoredNumber(endMm - beginMm);
        this.lowerEdgeMm = new StoredNumber(lowerEdgeMm);
    }

    /// <summary>Where it begins, along the strips: from the left on strips along the width, from below on strips along the height.</summary>
    public Length Begin => Length.FromMillimeters(this.beginMm.Bare);

    /// <summary>Length of the piece.</summary>
    public Length Length => Length.FromMillimeters(this.lengthMm.Bare);

    /// <summary>Its lower edge, across the strips; on strips along the height, its left edge.</summary>
    public Length LowerEdge => Length.FromMillimeters(this.lowerEdgeMm.Bare);

    /// <summary>The place in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.lengthMm.Bare:0.0} mm from {this.beginMm.Bare:0.0} mm, lower edge at {this.lowerEdgeMm.Bare:0.0} mm");
}
