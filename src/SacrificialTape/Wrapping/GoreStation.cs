using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>A line of the table by which gores are cut: how far from the low edge, and how wide on each side of the middle.</summary>
public sealed record GoreStation
{
    private readonly StoredNumber fromEdgeMm;
    private readonly StoredNumber halfWidthMm;

    internal GoreStation(double fromEdgeMm, double halfWidthMm)
    {
        this.fromEdgeMm = new StoredNumber(fromEdgeMm);
        this.halfWidthMm = new StoredNumber(halfWidthMm);
    }

    /// <summary>Distance from the low edge along the strip.</summary>
    public Length FromLowEdge => Length.FromMillimeters(this.fromEdgeMm.Bare);

    /// <summary>Width on each side of the middle of the strip, lap included.</summary>
    public Length HalfWidth => Length.FromMillimeters(this.halfWidthMm.Bare);

    /// <summary>Both numbers in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.halfWidthMm.Bare:0.0} mm at {this.fromEdgeMm.Bare:0.0} mm");
}
