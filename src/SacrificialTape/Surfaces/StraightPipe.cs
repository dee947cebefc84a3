using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A straight length of pipe, covered on its outside.</summary>
/// <remarks>
/// Outside diameter: 1 mm to 100 m. Length: more than 0, at most 1000 km. The outside diameter is what a crew measures
/// with a tape round the pipe, divided by pi; it is not the nominal size: see <see cref="PipeSize"/>.
/// </remarks>
public sealed record StraightPipe : Surface
{
    private static readonly AcceptedRange AcceptedDiameter = AcceptedRange.Between(1, 100_000, "mm");
    private static readonly AcceptedRange AcceptedLength = AcceptedRange.AboveUpTo(0, 1e6, "m");

    private readonly StoredNumber diameterMm;
    private readonly StoredNumber lengthMm;

    /// <summary>Describes a pipe by its outside diameter.</summary>
    /// <param name="outsideDiameter">1 mm to 100 m.</param>
    /// <param name="length">Along the pipe, more than 0, at most 1000 km.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public StraightPipe(Length outsideDiameter, Length length)
    {
        this.diameterMm = new StoredNumber(CheckDiameter(outsideDiameter, nameof(outsideDiameter)));
        this.lengthMm = new StoredNumber(
            AcceptedLength.Check(UnitConversions.Millimeters(length) / 1000, nameof(length)) * 1000);
    }

    /// <summary>Describes a pipe by its nominal size.</summary>
    /// <param name="size">The size, under a stated standard.</param>
    /// <param name="length">Along the pipe, more than 0, at most 1000 km.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public StraightPipe(PipeSize size, Length length)
        : this((size ?? throw new ArgumentNullException(nameof(size))).OutsideDiameter, length)
    {
    }

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.DiameterMm);

    /// <summary>Length along the pipe.</summary>
    public Length Length => Length.FromMillimeters(this.LengthMm);

    /// <summary>Outside circumference.</summary>
    [BasisOf(typeof(PipeFormulas), nameof(PipeFormulas.Circumference))]
    public Length Circumference => Length.FromMillimeters(PipeKernel.CircumferenceMm(this.DiameterMm, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(PipeFormulas), nameof(PipeFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters);

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture, $"pipe {this.DiameterMm:0.##} mm, {this.LengthMm / 1000:0.###} m long");

    internal double DiameterMm => this.diameterMm.Bare;

    internal double LengthMm => this.lengthMm.Bare;

    internal double SquareMeters => PipeKernel.SquareMeters(this.DiameterMm, this.LengthMm, default(NoSteps));

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = PipeKernel.SquareMeters(this.DiameterMm, this.LengthMm, steps);
        return steps.Under("Area of " + this.Description);
    }

    internal static double CheckDiameter(Length outsideDiameter, string parameter) =>
        AcceptedDiameter.Check(UnitConversions.Millimeters(outsideDiameter), parameter);
}
