using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>The rim of an opening in a sheet: its edge through the thickness and a band round it on both faces.</summary>
/// <remarks>
/// Sizes: 1 mm to 100 m. Thickness: more than 0, at most 1 m. Reach: 0 to 100 m on each face; that there is sheet to
/// reach over is for whoever places the opening to see to. The bands round a rectangle have square corners, those round
/// a circle are rings.
/// </remarks>
public sealed record WindowOpening : Surface
{
    private readonly StoredNumber widthMm;
    private readonly StoredNumber heightMm;
    private readonly StoredNumber thicknessMm;
    private readonly StoredNumber frontMm;
    private readonly StoredNumber backMm;

    private WindowOpening(bool isRound, double widthMm, double heightMm, Length thickness, Length frontReach, Length backReach)
    {
        this.IsRound = isRound;
        this.widthMm = new StoredNumber(widthMm);
        this.heightMm = new StoredNumber(heightMm);
        this.thicknessMm = new StoredNumber(FittingRanges.ThicknessMm(thickness, nameof(thickness)));
        this.frontMm = new StoredNumber(FittingRanges.UpTo(frontReach, RimRanges.MostReachMm, nameof(frontReach)));
        this.backMm = new StoredNumber(FittingRanges.UpTo(backReach, RimRanges.MostReachMm, nameof(backReach)));
    }

    /// <summary>Whether it is a circle.</summary>
    public bool IsRound { get; }

    /// <summary>Clear width of the opening; the diameter of a circle.</summary>
    public Length ClearWidth => Length.FromMillimeters(this.WidthMm);

    /// <summary>Clear height of the opening; the diameter of a circle.</summary>
    public Length ClearHeight => Length.FromMillimeters(this.HeightMm);

    /// <summary>Thickness of the sheet.</summary>
    public Length Thickness => Length.FromMillimeters(this.ThicknessMm);

    /// <summary>Width of the band on the front.</summary>
    public Length FrontReach => Length.FromMillimeters(this.FrontMm);

    /// <summary>Width of the band on the back.</summary>
    public Length BackReach => Length.FromMillimeters(this.BackMm);

    /// <summary>Length of the rim: what a tape measure laid round inside the opening reads.</summary>
    [BasisOf(typeof(RimFormulas), nameof(RimFormulas.RectangularRim))]
    [BasisOf(typeof(RimFormulas), nameof(RimFormulas.RoundRim))]
    public Length RimLength => Length.FromMillimeters(RimKernel.RimMm(this, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(RimFormulas), nameof(RimFormulas.RectangularOpening))]
    [BasisOf(typeof(RimFormulas), nameof(RimFormulas.RoundOpening))]
    public override Area Area => Area.FromSquareMeters(RimKernel.OpeningSquareMeters(this, default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"rim of {this.Form}, sheet {this.ThicknessMm:0.##} mm, reach {this.FrontMm:0.##} and {this.BackMm:0.##} mm");

    private string Form => this.IsRound
        ? string.Create(CultureInfo.InvariantCulture, $"a round opening {this.WidthMm:0.##} mm")
        : string.Create(CultureInfo.InvariantCulture, $"an opening {this.WidthMm:0.##} x {this.HeightMm:0.##} mm");

    internal double WidthMm => this.widthMm.Bare;

    internal double HeightMm => this.heightMm.Bare;

    internal double ThicknessMm => this.thicknessMm.Bare;

    internal double FrontMm => this.frontMm.Bare;

    internal double BackMm => this.backMm.Bare;

    /// <summary>A rectangular opening.</summary>
    /// <param name="clearWidth">Of the opening.</param>
    /// <param name="clearHeight">Of the opening.</param>
    /// <param name="thickness">Of the sheet.</param>
    /// <param name="frontReach">Width of the band on the front.</param>
    /// <param name="backReach">Width of the band on the back.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static WindowOpening Rectangular(Length clearWidth, Length clearHeight, Length thickness, Length frontReach, Length backReach) => new(
        false,
        FittingRanges.DiameterMm(clearWidth, nameof(clearWidth)),
        FittingRanges.DiameterMm(clearHeight, nameof(clearHeight)),
        thickness,
        frontReach,
        backReach);

    /// <summary>A round opening.</summary>
    /// <param name="clearDiameter">Of the opening.</param>
    /// <param name="thickness">Of the sheet.</param>
    /// <param name="frontReach">Width of the band on the front.</param>
    /// <param name="backReach">Width of the band on the back.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static WindowOpening Circular(Length clearDiameter, Length thickness, Length frontReach, Length backReach)
    {
        double mm = FittingRanges.DiameterMm(clearDiameter, nameof(clearDiameter));
        return new(true, mm, mm, thickness, frontReach, backReach);
    }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = RimKernel.OpeningSquareMeters(this, steps);
        return steps.Under("Area of " + this.Description);
    }
}
