using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A rectangular base plate under a column: its top outside the column and its four narrow sides.</summary>
/// <remarks>
/// Width and depth: 1 mm to 100 m. Thickness: more than 0, at most 1 m. Bolt holes, at most 1000, are taken off whole:
/// bolts, nuts and washers are steel of their own. The column stands on the plate with all of its foot.
/// </remarks>
public sealed record BasePlate
{
    private const int MostHoles = 1000;

    private readonly StoredNumber widthMm;
    private readonly StoredNumber depthMm;
    private readonly StoredNumber thicknessMm;
    private readonly StoredNumber holeMm;

    /// <summary>Describes a plate.</summary>
    /// <param name="width">One side.</param>
    /// <param name="depth">The other side.</param>
    /// <param name="thickness">Of the plate.</param>
    /// <param name="boltHoles">Number of bolt holes; may be zero.</param>
    /// <param name="boltHoleDiameter">Of a bolt hole; zero if there are none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public BasePlate(Length width, Length depth, Length thickness, int boltHoles, Length boltHoleDiameter)
    {
        double w = FittingRanges.DiameterMm(width, nameof(width));
        double d = FittingRanges.DiameterMm(depth, nameof(depth));
        this.BoltHoles = boltHoles is >= 0 and <= MostHoles
            ? boltHoles
            : throw AcceptedRange.Between(0, MostHoles, string.Empty).Refuse(boltHoles, nameof(boltHoles));
        this.widthMm = new StoredNumber(w);
        this.depthMm = new StoredNumber(d);
        this.thicknessMm = new StoredNumber(FittingRanges.ThicknessMm(thickness, nameof(thickness)));
        this.holeMm = new StoredNumber(FittingRanges.UpTo(boltHoleDiameter, boltHoles == 0 ? 0 : Math.Min(w, d), nameof(boltHoleDiameter)));
    }

    /// <summary>One side.</summary>
    public Length Width => Length.FromMillimeters(this.WidthMm);

    /// <summary>The other side.</summary>
    public Length Depth => Length.FromMillimeters(this.DepthMm);

    /// <summary>Thickness.</summary>
    public Length Thickness => Length.FromMillimeters(this.ThicknessMm);

    /// <summary>Number of bolt holes.</summary>
    public int BoltHoles { get; }

    /// <summary>Diameter of a bolt hole.</summary>
    public Length BoltHoleDiameter => Length.FromMillimeters(this.HoleMm);

    internal double WidthMm => this.widthMm.Bare;

    internal double DepthMm => this.depthMm.Bare;

    internal double ThicknessMm => this.thicknessMm.Bare;

    internal double HoleMm => this.holeMm.Bare;

    /// <summary>Dimensions in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"base plate {this.WidthMm:0.##} x {this.DepthMm:0.##} x {this.ThicknessMm:0.##} mm, {this.BoltHoles} hole(s) of {this.HoleMm:0.##} mm");
}
