using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A sheet with trapezoidal corrugations, covered on one face.</summary>
/// <remarks>
/// <para>Pitch: 1 mm to 100 m. Crown and valley: 0 or more, together at most the pitch. Depth: 0 to 100 m. Corrugations: 1
/// to 100 000. Flat beside them: 0 to 1000 m. Length along them: 1 mm to 1000 m.</para>
/// <para>The bends are taken as sharp: a rounded bend makes the true width a little less. All widths are those of the face
/// that is covered.</para>
/// </remarks>
public sealed record CorrugatedPanel : Surface
{
    private const double MostWidthMm = 100_000;
    private const double MostFlatMm = 1e6;
    private const int MostCorrugations = 100_000;

    private readonly StoredNumber pitchMm;
    private readonly StoredNumber crownMm;
    private readonly StoredNumber valleyMm;
    private readonly StoredNumber depthMm;
    private readonly StoredNumber lengthMm;
    private readonly StoredNumber flatMm;

    /// <summary>Describes a sheet by its profile.</summary>
    /// <param name="pitch">From crown to crown.</param>
    /// <param name="crownWidth">Flat width of a crown.</param>
    /// <param name="valleyWidth">Flat width of a valley.</param>
    /// <param name="depth">From crown to valley, square to the sheet.</param>
    /// <param name="corrugations">How many pitches lie side by side.</param>
    /// <param name="length">Along the corrugations.</param>
    /// <param name="flatWidth">Flat width beside the corrugations; none unless stated.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public CorrugatedPanel(
        Length pitch, Length crownWidth, Length valleyWidth, Length depth, int corrugations, Length length, Length? flatWidth = null)
    {
        double step = FittingRanges.DiameterMm(pitch, nameof(pitch));
        double crown = FittingRanges.Within(UnitConversions.Millimeters(crownWidth), 0, step, nameof(crownWidth));
        this.pitchMm = new StoredNumber(step);
        this.crownMm = new StoredNumber(crown);
        double valley = UnitConversions.Millimeters(valleyWidth);

        // Upright webs are legal: the last digit of the difference must not refuse them.
        this.valleyMm = new StoredNumber(valley >= 0 && WithAllowance.AtMost(crown + valley, step)
            ? valley
            : throw AcceptedRange.Between(0, step - crown, "mm").Noting("the pitch less the crown").Refuse(valley, nameof(valleyWidth)));
        this.depthMm = new StoredNumber(FittingRanges.Within(UnitConversions.Millimeters(depth), 0, MostWidthMm, nameof(depth)));
        this.Corrugations = corrugations is >= 1 and <= MostCorrugations
            ? corrugations
            : throw AcceptedRange.Between(1, MostCorrugations, string.Empty).Refuse(corrugations, nameof(corrugations));
        this.lengthMm = new StoredNumber(FittingRanges.ExtentMm(length, nameof(length)));
        this.flatMm = new StoredNumber(FittingRanges.Within(UnitConversions.Millimeters(flatWidth ?? Length.Zero), 0, MostFlatMm, nameof(flatWidth)));
    }

    /// <summary>From crown to crown.</summary>
    public Length Pitch => Length.FromMillimeters(this.PitchMm);

    /// <summary>Flat width of a crown.</summary>
    public Length CrownWidth => Length.FromMillimeters(this.CrownMm);

    /// <summary>Flat width of a valley.</summary>
    public Length ValleyWidth => Length.FromMillimeters(this.ValleyMm);

    /// <summary>From crown to valley, square to the sheet.</summary>
    public Length Depth => Length.FromMillimeters(this.DepthMm);

    /// <summary>How many pitches lie side by side.</summary>
    public int Corrugations { get; }

    /// <summary>Along the corrugations.</summary>
    public Length Length => Length.FromMillimeters(this.LengthMm);

    /// <summary>Flat width beside the corrugations.</summary>
    public Length FlatWidth => Length.FromMillimeters(this.FlatMm);

    /// <summary>Width that one pitch has when unfolded: what a tape measure pressed into a corrugation reads.</summary>
    [BasisOf(typeof(PanelFormulas), nameof(PanelFormulas.Developed))]
    public Length DevelopedPitch => Length.FromMillimeters(
        PanelKernel.DevelopedMm(this.PitchMm, this.CrownMm, this.ValleyMm, this.DepthMm, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(PanelFormulas), nameof(PanelFormulas.Corrugated))]
    public override Area Area => Area.FromSquareMeters(PanelKernel.CorrugatedSquareMeters(this, default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"corrugated sheet {this.LengthMm / 1000:0.###} m long, {this.Corrugations} corrugations of {this.PitchMm:0.##} mm, {this.DepthMm:0.##} mm deep");

    internal double PitchMm => this.pitchMm.Bare;

    internal double CrownMm => this.crownMm.Bare;

    internal double ValleyMm => this.valleyMm.Bare;

    internal double DepthMm => this.depthMm.Bare;

    internal double LengthMm => this.lengthMm.Bare;

    internal double FlatMm => this.flatMm.Bare;

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = PanelKernel.CorrugatedSquareMeters(this, steps);
        return steps.Under("Area of " + this.Description);
    }
}
