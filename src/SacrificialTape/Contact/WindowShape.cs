using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Size and form of like windows, without a place.</summary>
/// <remarks>Sides and diameter: more than 0, at most 1 m.</remarks>
public sealed record WindowShape
{
    private static readonly AcceptedRange AcceptedSize = AcceptedRange.AboveUpTo(0, 1000, "mm");

    private readonly StoredNumber alongMm;
    private readonly StoredNumber aroundMm;

    private WindowShape(double alongMm, double aroundMm, bool isRound)
    {
        this.alongMm = new StoredNumber(alongMm);
        this.aroundMm = new StoredNumber(aroundMm);
        this.IsRound = isRound;
    }

    /// <summary>Whether it is a disc.</summary>
    public bool IsRound { get; }

    /// <summary>Its side along the surface; the diameter of a disc.</summary>
    public Length ExtentAlong => Length.FromMillimeters(this.AlongMm);

    /// <summary>Its side around the surface; the diameter of a disc.</summary>
    public Length ExtentAround => Length.FromMillimeters(this.AroundMm);

    internal double AlongMm => this.alongMm.Bare;

    internal double AroundMm => this.aroundMm.Bare;

    /// <summary>A rectangle.</summary>
    /// <param name="along">Its side along the surface.</param>
    /// <param name="around">Its side around the surface.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static WindowShape Rectangle(Length along, Length around) => new(
        AcceptedSize.Check(UnitConversions.Millimeters(along), nameof(along)),
        AcceptedSize.Check(UnitConversions.Millimeters(around), nameof(around)),
        false);

    /// <summary>A disc.</summary>
    /// <param name="diameter">Its diameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static WindowShape Disc(Length diameter)
    {
        double mm = AcceptedSize.Check(UnitConversions.Millimeters(diameter), nameof(diameter));
        return new(mm, mm, true);
    }

    /// <summary>A window of this shape at a place.</summary>
    /// <param name="along">Its middle along the surface.</param>
    /// <param name="around">Its middle around the surface.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ContactWindow At(Length along, Length around) => this.IsRound
        ? ContactWindow.Disc(along, around, this.ExtentAlong)
        : ContactWindow.Rectangle(along, around, this.ExtentAlong, this.ExtentAround);

    /// <summary>Size in a few words.</summary>
    public override string ToString() => this.IsRound
        ? string.Create(CultureInfo.InvariantCulture, $"disc {this.AlongMm:0.#} mm")
        : string.Create(CultureInfo.InvariantCulture, $"{this.AlongMm:0.#} x {this.AroundMm:0.#} mm");
}
