using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A bend made of straight pieces of pipe, cut slantwise and welded, covered on its outside.</summary>
/// <remarks>
/// Ranges as for <see cref="Bend"/>, but the angle is less than 180 degrees for each joint. Joints: 1 to 50. The radius
/// is that of the circle which the axes of the pieces touch. The bend is counted from tangent point to tangent point: the
/// two end pieces are half a middle piece long. With many joints its area is that of the smooth bend.
/// </remarks>
public sealed record MitredBend : Surface
{
    private readonly StoredNumber diameterMm;
    private readonly StoredNumber radiusMm;
    private readonly StoredNumber degrees;

    /// <summary>Describes a mitred bend.</summary>
    /// <param name="outsideDiameter">Of the pipe.</param>
    /// <param name="bendRadius">Of the circle that the axes touch.</param>
    /// <param name="angle">By which the line turns.</param>
    /// <param name="joints">Mitre joints, each turning the same angle.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A value is outside its range, or the pieces are so short that they cut each other on the inside of the bend.
    /// </exception>
    public MitredBend(Length outsideDiameter, Length bendRadius, Angle angle, int joints)
    {
        AcceptedRange.Between(1, 50, "joints").Check(joints);
        double diameter = StraightPipe.CheckDiameter(outsideDiameter, nameof(outsideDiameter));
        this.diameterMm = new StoredNumber(diameter);
        this.radiusMm = new StoredNumber(Bend.CheckRadius(bendRadius, diameter));
        this.degrees = new StoredNumber(
            AcceptedRange.Inside(0, 180.0 * joints, "deg").Noting("180 for each joint")
                .Check(Bend.CheckAngle(angle), nameof(angle)));
        this.Joints = joints;
    }

    /// <summary>Outside diameter of the pipe.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.diameterMm.Bare);

    /// <summary>Radius of the circle that the axes touch.</summary>
    public Length BendRadius => Length.FromMillimeters(this.radiusMm.Bare);

    /// <summary>Angle by which the line turns.</summary>
    public Angle Angle => Angle.FromDegrees(this.degrees.Bare);

    /// <summary>Mitre joints.</summary>
    public int Joints { get; }

    /// <summary>Angle by which the line turns at one joint; the cut is slanted by half of it.</summary>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.JointTurn))]
    public Angle JointTurn => Angle.FromDegrees(
        BendKernel.JointTurnDegrees(this.AngleDegrees, this.Joints, default(NoSteps)));

    /// <summary>A middle piece along the outside of the bend, from weld to weld; an end piece is half as long.</summary>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.PieceOutside))]
    public Length PieceOutside => Length.FromMillimeters(BendKernel.PieceOutsideMm(
        this.DiameterMm, this.RadiusMm, UnitConversions.Degrees(this.JointTurn), default(NoSteps)));

    /// <summary>A middle piece along the inside of the bend, from weld to weld; an end piece is half as long.</summary>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.PieceInside))]
    public Length PieceInside => Length.FromMillimeters(BendKernel.PieceInsideMm(
        this.DiameterMm, this.RadiusMm, UnitConversions.Degrees(this.JointTurn), default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(BendFormulas), nameof(BendFormulas.MitredArea))]
    public override Area Area => Area.FromSquareMeters(this.Solve(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"mitred bend {this.degrees.Bare:0.##} deg with {this.Joints} joint(s) of pipe {this.diameterMm.Bare:0.##} mm, radius {this.radiusMm.Bare:0.##} mm");

    internal double DiameterMm => this.diameterMm.Bare;

    internal double RadiusMm => this.radiusMm.Bare;

    internal double AngleDegrees => this.degrees.Bare;

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        double turn = BendKernel.JointTurnDegrees(this.AngleDegrees, this.Joints, steps);
        _ = BendKernel.PieceOutsideMm(this.DiameterMm, this.RadiusMm, turn, steps);
        _ = BendKernel.PieceInsideMm(this.DiameterMm, this.RadiusMm, turn, steps);
        _ = this.Solve(steps);
        return steps.Under("Area of " + this.Description);
    }

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => BendKernel.MitredSquareMeters(
            this.diameterMm.Bare, this.radiusMm.Bare, this.degrees.Bare, this.Joints, steps);
}
