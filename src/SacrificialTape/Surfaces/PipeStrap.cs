using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A strap round a pipe, as on a clamp or support: the faces of a flat bar bent round it, with straight ends.</summary>
/// <remarks>
/// Pipe: outside diameter 1 mm to 100 m. Strap: 1 mm to 100 m wide, more than 0 and at most 1 m thick. Wrap: more than 0,
/// at most 360 degrees. Straight ends: 0 to 100 m, both together. The narrow edges of the strap are not part of it, nor is
/// the steel of the pipe. A strap that carries a pipe stays on until someone licensed for it says otherwise.
/// </remarks>
public sealed record PipeStrap : Surface
{
    private const double FullTurn = 360;
    private const double MostEndsMm = 100_000;

    private readonly StoredNumber pipeMm;
    private readonly StoredNumber widthMm;
    private readonly StoredNumber thicknessMm;
    private readonly StoredNumber wrapDegrees;
    private readonly StoredNumber endsMm;

    /// <summary>Describes a strap.</summary>
    /// <param name="pipeOutsideDiameter">Outside diameter of the pipe, on which the inner face lies.</param>
    /// <param name="strapWidth">Along the pipe.</param>
    /// <param name="strapThickness">Of the bar.</param>
    /// <param name="wrap">How far it goes round the pipe.</param>
    /// <param name="straightEnds">Length of both straight ends together; may be zero.</param>
    /// <param name="faces">Which faces are covered.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public PipeStrap(
        Length pipeOutsideDiameter, Length strapWidth, Length strapThickness, Angle wrap, Length straightEnds, StrapFaces faces)
    {
        this.pipeMm = new StoredNumber(FittingRanges.DiameterMm(pipeOutsideDiameter, nameof(pipeOutsideDiameter)));
        this.widthMm = new StoredNumber(FittingRanges.DiameterMm(strapWidth, nameof(strapWidth)));
        this.thicknessMm = new StoredNumber(FittingRanges.ThicknessMm(strapThickness, nameof(strapThickness)));
        this.wrapDegrees = new StoredNumber(AcceptedRange.AboveUpTo(0, FullTurn, "deg").Check(UnitConversions.Degrees(wrap), nameof(wrap)));
        this.endsMm = new StoredNumber(FittingRanges.UpTo(straightEnds, MostEndsMm, nameof(straightEnds)));
        this.Faces = Enum.IsDefined(faces) ? faces : throw new ArgumentOutOfRangeException(nameof(faces), faces, "State Outer or Both.");
    }

    /// <summary>Outside diameter of the pipe.</summary>
    public Length PipeOutsideDiameter => Length.FromMillimeters(this.pipeMm.Bare);

    /// <summary>Width of the strap, along the pipe.</summary>
    public Length StrapWidth => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>Thickness of the bar.</summary>
    public Length StrapThickness => Length.FromMillimeters(this.thicknessMm.Bare);

    /// <summary>How far it goes round the pipe.</summary>
    public Angle Wrap => Angle.FromDegrees(this.wrapDegrees.Bare);

    /// <summary>Length of both straight ends together.</summary>
    public Length StraightEnds => Length.FromMillimeters(this.endsMm.Bare);

    /// <summary>Which faces are covered.</summary>
    public StrapFaces Faces { get; }

    /// <summary>Length of the outer face: what a tape measure laid over the strap reads.</summary>
    [BasisOf(typeof(SupportFormulas), nameof(SupportFormulas.OuterFace))]
    public Length OuterFaceLength => Length.FromMillimeters(
        SupportKernel.OuterFaceMm(this.pipeMm.Bare, this.thicknessMm.Bare, this.wrapDegrees.Bare, this.endsMm.Bare, default(NoSteps)));

    /// <summary>Length of the inner face, which lies on the pipe.</summary>
    [BasisOf(typeof(SupportFormulas), nameof(SupportFormulas.InnerFace))]
    public Length InnerFaceLength => Length.FromMillimeters(
        SupportKernel.InnerFaceMm(this.pipeMm.Bare, this.wrapDegrees.Bare, this.endsMm.Bare, default(NoSteps)));

    internal double PipeMm => this.pipeMm.Bare;

    internal double WidthMm => this.widthMm.Bare;

    internal double ThicknessMm => this.thicknessMm.Bare;

    /// <summary>A full turn without ends closes on itself.</summary>
    internal bool IsClosed => this.endsMm.Bare == 0 && this.wrapDegrees.Bare == FullTurn;

    /// <inheritdoc/>
    [BasisOf(typeof(SupportFormulas), nameof(SupportFormulas.StrapArea))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"strap {this.widthMm.Bare:0.##} x {this.thicknessMm.Bare:0.##} mm, {this.wrapDegrees.Bare:0.##} deg round pipe {this.pipeMm.Bare:0.##} mm, {(this.Faces == StrapFaces.Both ? "both faces" : "outer face")}");

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.SquareMeters(steps);
        return steps.Under("Area of " + this.Description);
    }

    internal double OuterMm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        SupportKernel.OuterFaceMm(this.pipeMm.Bare, this.thicknessMm.Bare, this.wrapDegrees.Bare, this.endsMm.Bare, steps);

    internal double InnerMm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        SupportKernel.InnerFaceMm(this.pipeMm.Bare, this.wrapDegrees.Bare, this.endsMm.Bare, steps);

    private double SquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double outer = this.OuterMm(steps);
        double inner = this.Faces == StrapFaces.Both ? this.InnerMm(steps) : 0;
        return SupportKernel.StrapSquareMeters(this.widthMm.Bare, outer, inner, steps);
    }
}
