using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Welds of mitre joints: each an ellipse round the pipe.</summary>
/// <remarks>Outside diameter: 1 mm to 100 m. Turn at one joint: more than 0, less than 180 degrees. Count: at least 1.</remarks>
public sealed record MitreWelds : WeldSeam
{
    private readonly StoredNumber diameterMm;
    private readonly StoredNumber degrees;

    /// <summary>Describes mitre welds.</summary>
    /// <param name="outsideDiameter">Of the pipe.</param>
    /// <param name="turn">By which the line turns at one joint: twice the angle of the cut.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public MitreWelds(Length outsideDiameter, Angle turn, int count)
        : base(count)
    {
        this.diameterMm = new StoredNumber(StraightPipe.CheckDiameter(outsideDiameter, nameof(outsideDiameter)));
        this.degrees = new StoredNumber(
            AcceptedRange.Inside(0, 180, "deg").Check(UnitConversions.Degrees(turn), nameof(turn)));
    }

    /// <summary>Outside diameter of the pipe.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.diameterMm.Bare);

    /// <summary>Angle by which the line turns at one joint.</summary>
    public Angle Turn => Angle.FromDegrees(this.degrees.Bare);

    /// <inheritdoc/>
    [BasisOf(typeof(WeldFormulas), nameof(WeldFormulas.Mitre))]
    public override Length SeamLength => Length.FromMillimeters(this.LengthMm(default(NoSteps)));

    /// <inheritdoc/>
    public override bool Closed => true;

    /// <inheritdoc/>
    public override string Place => "round the pipe, along the mitre";

    /// <summary>The mitre welds of a bend; those that join it to the straight pipe are girth welds.</summary>
    /// <param name="bend">The bend.</param>
    public static MitreWelds Of(MitredBend bend)
    {
        ArgumentNullException.ThrowIfNull(bend);
        return new(bend.OutsideDiameter, bend.JointTurn, bend.Joints);
    }

    internal override double LengthMm<TSteps>(TSteps steps) => WeldKernel.MitreMm(this.diameterMm.Bare, this.degrees.Bare, steps);
}
