using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>One window of bare steel in the paint, at its place on the unrolled surface: a rectangle or a disc.</summary>
/// <remarks>Sides and diameter: more than 0, at most 1 m, measured on the steel. The place is that of its middle.</remarks>
public sealed record ContactWindow
{
    private static readonly AcceptedRange AcceptedSize = AcceptedRange.AboveUpTo(0, 1000, "mm");
    private static readonly AcceptedRange AcceptedPlace = AcceptedRange.Between(-1e9, 1e9, "mm");

    private readonly StoredNumber alongMm;
    private readonly StoredNumber aroundMm;
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber widthMm;

    private ContactWindow(Length along, Length around, double lengthMm, double widthMm, bool isRound)
    {
        this.alongMm = new StoredNumber(AcceptedPlace.Check(UnitConversions.Millimeters(along), nameof(along)));
        this.aroundMm = new StoredNumber(AcceptedPlace.Check(UnitConversions.Millimeters(around), nameof(around)));
        this.lengthMm = new StoredNumber(lengthMm);
        this.widthMm = new StoredNumber(widthMm);
        this.IsRound = isRound;
    }

    /// <summary>Whether it is a disc.</summary>
    public bool IsRound { get; }

    /// <summary>Its middle, along the surface from the start.</summary>
    public Length Along => Length.FromMillimeters(this.AlongMm);

    /// <summary>Its middle, around the surface from the named line.</summary>
    public Length Around => Length.FromMillimeters(this.AroundMm);

    /// <summary>Its extent along the surface; the diameter of a disc.</summary>
    public Length ExtentAlong => Length.FromMillimeters(this.LengthMm);

    /// <summary>Its extent around the surface; the diameter of a disc.</summary>
    public Length ExtentAround => Length.FromMillimeters(this.WidthMm);

    internal double AlongMm => this.alongMm.Bare;

    internal double AroundMm => this.aroundMm.Bare;

    internal double LengthMm => this.lengthMm.Bare;

    internal double WidthMm => this.widthMm.Bare;

    internal double AreaMm2 => 100 * (this.IsRound
        ? WindowKernel.DiscCm2(this.LengthMm, default(Provenance.NoSteps))
        : WindowKernel.RectangleCm2(this.LengthMm, this.WidthMm, default(Provenance.NoSteps)));

    /// <summary>Size in words for the crew.</summary>
    internal string Size => this.IsRound
        ? string.Create(CultureInfo.InvariantCulture, $"disc {this.LengthMm:0.#} mm")
        : string.Create(CultureInfo.InvariantCulture, $"{this.LengthMm:0.#} x {this.WidthMm:0.#} mm");

    /// <summary>A rectangle.</summary>
    /// <param name="along">Its middle along the surface.</param>
    /// <param name="around">Its middle around the surface.</param>
    /// <param name="extentAlong">Its side along the surface.</param>
    /// <param name="extentAround">Its side around the surface.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ContactWindow Rectangle(Length along, Length around, Length extentAlong, Length extentAround) => new(
        along,
        around,
        AcceptedSize.Check(UnitConversions.Millimeters(extentAlong), nameof(extentAlong)),
        AcceptedSize.Check(UnitConversions.Millimeters(extentAround), nameof(extentAround)),
        false);

    /// <summary>A disc.</summary>
    /// <param name="along">Its middle along the surface.</param>
    /// <param name="around">Its middle around the surface.</param>
    /// <param name="diameter">Its diameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ContactWindow Disc(Length along, Length around, Length diameter)
    {
        double mm = AcceptedSize.Check(UnitConversions.Millimeters(diameter), nameof(diameter));
        return new(along, around, mm, mm, true);
    }

    /// <summary>The same window at another place.</summary>
    /// <param name="along">Its middle along the surface.</param>
    /// <param name="around">Its middle around the surface.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ContactWindow At(Length along, Length around) => new(along, around, this.LengthMm, this.WidthMm, this.IsRound);

    /// <summary>Size and place in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"window {this.Size} at {this.AlongMm:0.#} mm along, {this.AroundMm:0.#} mm around");
}
