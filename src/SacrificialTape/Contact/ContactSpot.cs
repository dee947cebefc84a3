using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>One round spot where two metals touch, at its place in the plane of contact.</summary>
/// <remarks>Radius: more than 0, at most 1 mm. Place: -1 to 1 m.</remarks>
public sealed record ContactSpot
{
    private static readonly AcceptedRange AcceptedPlace = AcceptedRange.Between(-1e6, 1e6, "um");

    private readonly StoredNumber xUm;
    private readonly StoredNumber yUm;
    private readonly StoredNumber radiusUm;

    /// <summary>Describes a spot.</summary>
    /// <param name="x">Its place one way.</param>
    /// <param name="y">Its place the other way.</param>
    /// <param name="radius">Its radius.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ContactSpot(Length x, Length y, Length radius)
    {
        this.xUm = new StoredNumber(AcceptedPlace.Check(UnitConversions.Micrometers(x), nameof(x)));
        this.yUm = new StoredNumber(AcceptedPlace.Check(UnitConversions.Micrometers(y), nameof(y)));
        this.radiusUm = new StoredNumber(AcceptedRange.AboveUpTo(0, 1000, "um").Check(UnitConversions.Micrometers(radius), nameof(radius)));
    }

    /// <summary>Its place one way.</summary>
    public Length X => Length.FromMicrometers(this.XUm);

    /// <summary>Its place the other way.</summary>
    public Length Y => Length.FromMicrometers(this.YUm);

    /// <summary>Its radius.</summary>
    public Length Radius => Length.FromMicrometers(this.RadiusUm);

    internal double XUm => this.xUm.Bare;

    internal double YUm => this.yUm.Bare;

    internal double RadiusUm => this.radiusUm.Bare;

    /// <summary>Radius and place in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"spot of radius {this.RadiusUm:0.###} um at {this.XUm:0.###}, {this.YUm:0.###} um");
}
