using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Exposure;

/// <summary>How well mass and area of a coupon are known: standard uncertainties (one standard deviation).</summary>
/// <remarks>Range: zero or more.</remarks>
public sealed record CouponUncertainty
{
    private readonly StoredNumber grams;
    private readonly StoredNumber squareCm;

    /// <summary>States the uncertainties.</summary>
    /// <param name="massLost">Of the mass lost: both weighings and the cleaning taken together.</param>
    /// <param name="area">Of the area.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is negative.</exception>
    public CouponUncertainty(Mass massLost, Area area)
    {
        this.grams = new StoredNumber(AcceptedRange.AtLeast(0, "g").Check(UnitConversions.Grams(massLost), nameof(massLost)));
        this.squareCm = new StoredNumber(AcceptedRange.AtLeast(0, "cm2").Check(UnitConversions.SquareCentimeters(area), nameof(area)));
    }

    /// <summary>Of the mass lost.</summary>
    public Mass MassLost => Mass.FromGrams(this.grams.Bare);

    /// <summary>Of the area.</summary>
    public Area Area => Area.FromSquareCentimeters(this.squareCm.Bare);

    internal double Grams => this.grams.Bare;

    internal double SquareCm => this.squareCm.Bare;

    /// <summary>Both uncertainties in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Grams:0.######} g and {this.SquareCm:0.######} cm2");
}
