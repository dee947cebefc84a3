using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>What is cut out of damaged tape, as it lies on the unrolled surface.</summary>
/// <remarks>Length and width: 0.1 mm to 10 m each; either may be the longer.</remarks>
public sealed record CutOut
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(0.1, 10_000, "mm");

    private readonly StoredNumber lengthMm;
    private readonly StoredNumber widthMm;

    private CutOut(CutOutShape shape, double lengthMm, double widthMm)
    {
        this.Shape = shape;
        this.lengthMm = new StoredNumber(lengthMm);
        this.widthMm = new StoredNumber(widthMm);
    }

    /// <summary>The shape.</summary>
    public CutOutShape Shape { get; }

    /// <summary>Its size one way.</summary>
    public Length Length => Length.FromMillimeters(this.LengthMm);

    /// <summary>Its size square to that.</summary>
    public Length Width => Length.FromMillimeters(this.WidthMm);

    /// <summary>Its area.</summary>
    [BasisOf(typeof(PatchFormulas), nameof(PatchFormulas.OvalArea))]
    public Area Area => Area.FromSquareMeters(this.SquareMm / 1e6);

    internal double LengthMm => this.lengthMm.Bare;

    internal double WidthMm => this.widthMm.Bare;

    internal double SquareMm => this.Shape == CutOutShape.Rectangle
        ? this.LengthMm * this.WidthMm
        : PatchKernel.OvalSquareMm(this.LengthMm, this.WidthMm);

    internal PatchShape Half => new(this.Shape == CutOutShape.Rectangle, this.LengthMm / 2, this.WidthMm / 2);

    /// <summary>A rectangle.</summary>
    /// <param name="length">0.1 mm to 10 m.</param>
    /// <param name="width">0.1 mm to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutOut Rectangle(Length length, Length width) =>
        new(CutOutShape.Rectangle, Checked(length, nameof(length)), Checked(width, nameof(width)));

    /// <summary>A circle.</summary>
    /// <param name="diameter">0.1 mm to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside its range.</exception>
    public static CutOut Circle(Length diameter) =>
        new(CutOutShape.Ellipse, Checked(diameter, nameof(diameter)), Checked(diameter, nameof(diameter)));

    /// <summary>An ellipse by its two axes.</summary>
    /// <param name="length">0.1 mm to 10 m.</param>
    /// <param name="width">0.1 mm to 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public static CutOut Ellipse(Length length, Length width) =>
        new(CutOutShape.Ellipse, Checked(length, nameof(length)), Checked(width, nameof(width)));

    /// <summary>Shape and size in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{(this.Shape == CutOutShape.Rectangle ? "rectangle" : "oval")} {this.LengthMm:0.##} x {this.WidthMm:0.##} mm");

    private static double Checked(Length length, string parameter) => Accepted.Check(UnitConversions.Millimeters(length), parameter);
}
