using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A smooth bend of a pipe, covered on its outside.</summary>
/// <remarks>
/// Outside diameter: 1 mm to 100 m. Bend radius, to the centre line: more than half the outside diameter (else the
/// bend would cut itself), at most 100 km. Angle: more than 0, at most 360 degrees. What a crew measures is the arc
/// along the outside, from tangent to tangent.
/// </remarks>
public sealed record Bend : Surface
{
    private readonly StoredNumber diameterMm;
    private readonly StoredNumber radiusMm;
    private readonly StoredNumber degrees;

    /// <summary>Describes a bend by its dimensions.</summary>
    /// <param name="outsideDiameter">Of the pipe.</param>
    /// <param name="bendRadius">From the centre of the bend to the centre line of the pipe.</param>
    /// <param name="angle">By which the line turns.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Bend(Length outsideDiameter, Length bendRadius, Angle angle)
    {
        double diameter = StraightPipe.CheckDiameter(outsideDiameter, nameof(outsideDiameter));
        this.diameterMm = new StoredNumber(diameter);
        this.radiusMm = new StoredNumber(CheckRadius(bendRadius, diameter));
        this.degrees = new StoredNumber(CheckAngle(angle));
    }

    /// <summary>Outside diameter of the pipe.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.DiameterMm);

    /// <summary>Bend radius, to the centre line.</summary>
    public Length BendRadius => Length.FromMillimeters(this.RadiusMm);

    /// <summary>Angle by which the line turns.</summary>
    public Angle Angle => Angle.FromDegrees(this.AngleDegrees);

    /// <summary>Arc along the outside of the bend, from tangent to tangent.</summary>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.OutsideArc))]
    public Length OutsideArc => Length.FromMillimeters(
        BendKernel.OutsideArcMm(this.DiameterMm, this.RadiusMm, this.AngleDegrees, default(NoSteps)));

    /// <summary>Arc along the inside of the bend, from tangent to tangent.</summary>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.InsideArc))]
    public Length InsideArc => Length.FromMillimeters(
        BendKernel.InsideArcMm(this.DiameterMm, this.RadiusMm, this.AngleDegrees, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(
        BendKernel.SquareMeters(this.DiameterMm, this.RadiusMm, this.AngleDegrees, default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"bend {this.AngleDegrees:0.##} deg of pipe {this.DiameterMm:0.##} mm, radius {this.RadiusMm:0.##} mm");

    internal double DiameterMm => this.diameterMm.Bare;

    internal double RadiusMm => this.radiusMm.Bare;

    internal double AngleDegrees => this.degrees.Bare;

    /// <summary>A long radius elbow: radius 1.5 NPS.</summary>
    /// <param name="size">NPS 1 or larger; below, the radius does not follow the rule and must be stated.</param>
    /// <param name="angle">By which the line turns.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is below NPS 1, or the angle is outside its range.</exception>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.LongRadius))]
    public static Bend LongRadius(PipeSize size, Angle angle) =>
        new(Checked(size).OutsideDiameter, Length.FromMillimeters(BendKernel.LongRadiusMm(size.NominalInches)), angle);

    /// <summary>A short radius elbow: radius 1.0 NPS.</summary>
    /// <param name="size">NPS 1 or larger; below, the radius must be stated.</param>
    /// <param name="angle">By which the line turns.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size is below NPS 1, or the angle is outside its range.</exception>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.ShortRadius))]
    public static Bend ShortRadius(PipeSize size, Angle angle) =>
        new(Checked(size).OutsideDiameter, Length.FromMillimeters(BendKernel.ShortRadiusMm(size.NominalInches)), angle);

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = BendKernel.OutsideArcMm(this.DiameterMm, this.RadiusMm, this.AngleDegrees, steps);
        _ = BendKernel.InsideArcMm(this.DiameterMm, this.RadiusMm, this.AngleDegrees, steps);
        _ = BendKernel.SquareMeters(this.DiameterMm, this.RadiusMm, this.AngleDegrees, steps);
        return steps.Under("Area of " + this.Description);
    }

    internal static double CheckRadius(Length bendRadius, double diameterMm) =>
        AcceptedRange.AboveUpTo(diameterMm / 2, 1e8, "mm").Noting("a bend of a smaller radius than half the pipe cuts itself")
            .Check(UnitConversions.Millimeters(bendRadius), nameof(bendRadius));

    internal static double CheckAngle(Angle angle) =>
        AcceptedRange.AboveUpTo(0, 360, "deg").Check(UnitConversions.Degrees(angle), nameof(angle));

    private static PipeSize Checked(PipeSize size)
    {
        ArgumentNullException.ThrowIfNull(size);
        AcceptedRange.AtLeast(1, "NPS").Noting("below, state the radius").Check(size.NominalInches, nameof(size));
        return size;
    }
}
