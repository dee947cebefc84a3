using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A number of like openings in a flat panel, or one at a stated place, whose area is not covered.</summary>
/// <remarks>
/// The sides of a rectangular opening run along the sides of the panel. Sizes: 1 mm to 100 m. Count: at least 1. Openings
/// without a place are held against the panel by their size and by their sum; those with a place must also lie within
/// the panel and clear of each other.
/// </remarks>
public sealed record PanelOpening
{
    private const double MostMm = 1e6;

    private readonly StoredNumber widthMm;
    private readonly StoredNumber heightMm;
    private readonly StoredNumber rightMm;
    private readonly StoredNumber upMm;

    private PanelOpening(bool isRound, double widthMm, double heightMm, int count, StoredNumber right = default, StoredNumber up = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        this.IsRound = isRound;
        this.widthMm = new StoredNumber(widthMm);
        this.heightMm = new StoredNumber(heightMm);
        this.Count = count;
        this.rightMm = right;
        this.upMm = up;
    }

    /// <summary>Whether it is a circle.</summary>
    public bool IsRound { get; }

    /// <summary>Width; the diameter of a circle.</summary>
    public Length Width => Length.FromMillimeters(this.WidthMm);

    /// <summary>Height; the diameter of a circle.</summary>
    public Length Height => Length.FromMillimeters(this.HeightMm);

    /// <summary>How many of them.</summary>
    public int Count { get; }

    /// <summary>Whether its place on the panel is stated.</summary>
    public bool IsPlaced => this.rightMm.IsSet;

    /// <summary>Its middle, to the right of the panel's middle (negative: to the left); null without a place.</summary>
    public Length? MiddleRight => this.IsPlaced ? Length.FromMillimeters(this.RightMm) : null;

    /// <summary>Its middle, above the panel's middle (negative: below); null without a place.</summary>
    public Length? MiddleUp => this.IsPlaced ? Length.FromMillimeters(this.UpMm) : null;

    internal double WidthMm => this.widthMm.Bare;

    internal double HeightMm => this.heightMm.Bare;

    internal double RightMm => this.rightMm.Bare;

    internal double UpMm => this.upMm.Bare;

    /// <summary>Round openings.</summary>
    /// <param name="diameter">Diameter.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static PanelOpening Circular(Length diameter, int count = 1)
    {
        double mm = FittingRanges.DiameterMm(diameter, nameof(diameter));
        return new(true, mm, mm, count);
    }

    /// <summary>Rectangular openings.</summary>
    /// <param name="width">Along the width of the panel.</param>
    /// <param name="height">Along the height of the panel.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static PanelOpening Rectangular(Length width, Length height, int count = 1) => new(
        false, FittingRanges.DiameterMm(width, nameof(width)), FittingRanges.DiameterMm(height, nameof(height)), count);

    /// <summary>The same opening at a place, measured from the middle of the panel to the middle of the opening.</summary>
    /// <param name="right">To the right; negative to the left. At most 1000 m either way.</param>
    /// <param name="up">Upwards; negative downwards. At most 1000 m either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="InvalidOperationException">There is more than one: each has a place of its own.</exception>
    public PanelOpening At(Length right, Length up)
    {
        if (this.Count > 1)
        {
            throw new InvalidOperationException(
                $"{this.Count} like openings cannot be at one place: list them one by one.");
        }

        return new(
            this.IsRound,
            this.WidthMm,
            this.HeightMm,
            1,
            new StoredNumber(FittingRanges.Within(UnitConversions.Millimeters(right), -MostMm, MostMm, nameof(right))),
            new StoredNumber(FittingRanges.Within(UnitConversions.Millimeters(up), -MostMm, MostMm, nameof(up))));
    }

    /// <summary>Count, size and place in a few words.</summary>
    public override string ToString()
    {
        string size = this.IsRound
            ? string.Create(CultureInfo.InvariantCulture, $"{this.Count} round of {this.WidthMm:0.##} mm")
            : string.Create(CultureInfo.InvariantCulture, $"{this.Count} of {this.WidthMm:0.##} x {this.HeightMm:0.##} mm");
        return this.IsPlaced
            ? size + string.Create(CultureInfo.InvariantCulture, $" at ({this.RightMm:0.##}, {this.UpMm:0.##}) mm")
            : size;
    }
}
