using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>How many washers a strip yields, in straight or staggered rows, whichever gives more.</summary>
/// <remarks>
/// <para>Strip: at least as wide and as long as a washer, at most 10 m wide and 10 km long. Gap: 0 to 100 m; none is left
/// at the edges of the strip. Straight rows are kept when staggered ones give no more.</para>
/// <para>The better of these two patterns is not proved to be the most that any pattern gives.</para>
/// </remarks>
public sealed record WasherCutting : IHasWorkings
{
    private const double MostWidthMm = 10_000;
    private const double MostLengthMm = 1e7;
    private const double MostGapMm = 100_000;

    private readonly StoredNumber widthMm;
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber gapMm;
    private readonly WasherLayout layout;

    /// <summary>Lays washers on a strip.</summary>
    /// <param name="washer">The size; its count does not matter here.</param>
    /// <param name="stripWidth">Of the strip.</param>
    /// <param name="stripLength">Of the strip: 1 m for washers per metre.</param>
    /// <param name="gap">Left between washers for the tool; none unless stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the strip is smaller than a washer.</exception>
    public WasherCutting(Washer washer, Length stripWidth, Length stripLength, Length? gap = null)
    {
        ArgumentNullException.ThrowIfNull(washer);
        this.Washer = washer;
        double between = FittingRanges.UpTo(gap ?? Length.Zero, MostGapMm, nameof(gap));
        double width = FittingRanges.Within(UnitConversions.Millimeters(stripWidth), washer.OutsideMm, MostWidthMm, nameof(stripWidth));
        double length = FittingRanges.Within(UnitConversions.Millimeters(stripLength), washer.OutsideMm, MostLengthMm, nameof(stripLength));
        this.widthMm = new StoredNumber(width);
        this.lengthMm = new StoredNumber(length);
        this.gapMm = new StoredNumber(between);
        this.layout = WasherKernel.Best(washer.OutsideMm, between, width, length);
    }

    /// <summary>The washers.</summary>
    public Washer Washer { get; }

    /// <summary>Width of the strip.</summary>
    public Length StripWidth => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>Length of the strip.</summary>
    public Length StripLength => Length.FromMillimeters(this.lengthMm.Bare);

    /// <summary>Gap left between washers.</summary>
    public Length Gap => Length.FromMillimeters(this.gapMm.Bare);

    /// <summary>Straight or staggered, whichever gives more.</summary>
    public WasherRows Arrangement => this.layout.Kind;

    /// <summary>Rows along the strip.</summary>
    public int Rows => this.layout.Rows;

    /// <summary>Distance of the rows, middle to middle.</summary>
    public Length RowDistance => Length.FromMillimeters(this.layout.RowDistanceMm.Bare);

    /// <summary>Step along a row, middle to middle.</summary>
    public Length Step => Length.FromMillimeters(this.layout.StepMm.Bare);

    /// <summary>Washers from the strip.</summary>
    public long Count => this.layout.Count;

    /// <summary>Washers that straight rows would give.</summary>
    public long StraightCount => WasherKernel.Straight(
        this.Washer.OutsideMm, this.gapMm.Bare, this.widthMm.Bare, this.lengthMm.Bare, default(NoSteps)).Count;

    /// <summary>Area of the washers over that of the strip; holes and what lies between are waste.</summary>
    [BasisOf(typeof(WasherFormulas), nameof(WasherFormulas.Yield))]
    public CuttingYield Yield => CuttingYield.FromFraction(this.Fraction(default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.layout.Kind == WasherRows.Straight
            ? WasherKernel.Straight(this.Washer.OutsideMm, this.gapMm.Bare, this.widthMm.Bare, this.lengthMm.Bare, steps)
            : WasherKernel.Staggered(this.Washer.OutsideMm, this.gapMm.Bare, this.widthMm.Bare, this.lengthMm.Bare, this.layout.Rows, steps);
        _ = this.Fraction(steps);
        return steps.Under(this.ToString());
    }

    /// <summary>Count, rows and strip in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Count} washers {this.Washer.OutsideMm:0.##} x {this.Washer.InsideMm:0.##} mm from {this.lengthMm.Bare / 1000:0.###} m of strip {this.widthMm.Bare:0.##} mm wide, {this.Rows} {(this.layout.Kind == WasherRows.Straight ? "straight" : "staggered")} row(s)");

    private double Fraction<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => WasherKernel.Yield(
        this.layout.Count, this.Washer.OutsideMm, this.Washer.InsideMm, this.widthMm.Bare, this.lengthMm.Bare, steps);
}
