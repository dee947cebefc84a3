using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Welds round a pipe.</summary>
/// <remarks>Outside diameter: 1 mm to 100 m. Count: at least 1.</remarks>
public sealed record GirthWelds : WeldSeam
{
    private readonly StoredNumber diameterMm;

    /// <summary>Describes girth welds.</summary>
    /// <param name="outsideDiameter">Of the pipe, 1 mm to 100 m.</param>
    /// <param name="count">How many, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public GirthWelds(Length outsideDiameter, int count)
        : base(count) =>
        this.diameterMm = new StoredNumber(StraightPipe.CheckDiameter(outsideDiameter, nameof(outsideDiameter)));

    /// <summary>Outside diameter of the pipe.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.diameterMm.Bare);

    /// <inheritdoc/>
    [BasisOf(typeof(PipeFormulas), nameof(PipeFormulas.Circumference))]
    public override Length SeamLength =>
        Length.FromMillimeters(this.LengthMm(default(NoSteps)));

    /// <inheritdoc/>
    public override bool Closed => true;

    internal override double LengthMm<TSteps>(TSteps steps) => PipeKernel.CircumferenceMm(this.diameterMm.Bare, steps);
}
