using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A round column that tapers evenly from foot to top, with or without a base plate.</summary>
/// <remarks>
/// Outside diameters: 1 mm to 100 m, the top at most the foot; equal ends give a straight column. Height: 1 mm to 1000 m,
/// along the axis. The end at the top is not covered. Work on columns is work at height.
/// </remarks>
public sealed record TaperedColumn : Surface
{
    private readonly StoredNumber footMm;
    private readonly StoredNumber topMm;
    private readonly StoredNumber heightMm;

    /// <summary>Describes a column.</summary>
    /// <param name="footOutsideDiameter">Outside diameter where it stands on the plate.</param>
    /// <param name="topOutsideDiameter">Outside diameter at the top.</param>
    /// <param name="height">Along the axis, plate not counted.</param>
    /// <param name="basePlate">Plate under it; none unless stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the foot is wider than the plate.</exception>
    /// <exception cref="ArgumentException">Foot and bolt holes leave nothing of the plate.</exception>
    public TaperedColumn(Length footOutsideDiameter, Length topOutsideDiameter, Length height, BasePlate? basePlate = null)
    {
        double foot = FittingRanges.DiameterMm(footOutsideDiameter, nameof(footOutsideDiameter));
        if (basePlate is not null)
        {
            _ = FittingRanges.Within(foot, 1, Math.Min(basePlate.WidthMm, basePlate.DepthMm), nameof(footOutsideDiameter));
            double room = SupportKernel.CornerHoleMm(foot, basePlate);
            if (!WithAllowance.AtMost(basePlate.HoleMm, room) || !(SupportKernel.PlateTopSquareMeters(foot, basePlate, default(NoSteps)) > 0))
            {
                throw new ArgumentException(
                    string.Create(CultureInfo.InvariantCulture, $"{basePlate.BoltHoles} bolt hole(s) of {basePlate.HoleMm:0.##} mm have no room on the plate: the foot leaves room for a hole of {room:0.##} mm in a corner."),
                    nameof(basePlate));
            }
        }

        this.footMm = new StoredNumber(foot);
        this.topMm = new StoredNumber(FittingRanges.Within(UnitConversions.Millimeters(topOutsideDiameter), 1, foot, nameof(topOutsideDiameter)));
        this.heightMm = new StoredNumber(FittingRanges.ExtentMm(height, nameof(height)));
        this.BasePlate = basePlate;
    }

    /// <summary>Outside diameter at the foot.</summary>
    public Length FootOutsideDiameter => Length.FromMillimeters(this.footMm.Bare);

    /// <summary>Outside diameter at the top.</summary>
    public Length TopOutsideDiameter => Length.FromMillimeters(this.topMm.Bare);

    /// <summary>Height along the axis.</summary>
    public Length Height => Length.FromMillimeters(this.heightMm.Bare);

    /// <summary>The plate under it; null without one.</summary>
    public BasePlate? BasePlate { get; }

    /// <summary>Length along the wall: what a rule laid against it reads.</summary>
    [BasisOf(typeof(ReducerFormulas), nameof(ReducerFormulas.Slant))]
    public Length Slant => Length.FromMillimeters(
        ReducerKernel.SlantMm(this.footMm.Bare, this.topMm.Bare, this.heightMm.Bare, default(NoSteps)));

    /// <summary>Area of the wall alone.</summary>
    [BasisOf(typeof(SupportFormulas), nameof(SupportFormulas.ColumnWall))]
    public Area WallArea => Area.FromSquareMeters(
        SupportKernel.ColumnWallSquareMeters(this.footMm.Bare, this.topMm.Bare, this.heightMm.Bare, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(SupportFormulas), nameof(SupportFormulas.ColumnArea))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"column {this.footMm.Bare:0.##} to {this.topMm.Bare:0.##} mm, {this.heightMm.Bare / 1000:0.###} m high, {(this.BasePlate is null ? "no base plate" : "with base plate")}");

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.SquareMeters(steps);
        return steps.Under("Area of " + this.Description);
    }

    internal Meridian Meridian => Meridian.Open(
        this.footMm.Bare,
        this.topMm.Bare,
        ReducerKernel.SlantMm(this.footMm.Bare, this.topMm.Bare, this.heightMm.Bare, default(NoSteps)));

    private double SquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double wall = SupportKernel.ColumnWallSquareMeters(this.footMm.Bare, this.topMm.Bare, this.heightMm.Bare, steps);
        if (this.BasePlate is null)
        {
            return SupportKernel.ColumnSquareMeters(wall, 0, 0, steps);
        }

        double top = SupportKernel.PlateTopSquareMeters(this.footMm.Bare, this.BasePlate, steps);
        double sides = SupportKernel.PlateSidesSquareMeters(this.BasePlate, steps);
        return SupportKernel.ColumnSquareMeters(wall, top, sides, steps);
    }
}
