using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A reducer with one straight side: a frustum of an oblique cone, covered on its outside.</summary>
/// <remarks>
/// Diameters: 1 mm to 100 m, the small end at most as wide as the large one; equal ends make a cylinder. Length between
/// the ends: 1 mm to 1000 m. The area is the exact integral, evaluated to 1e-12 of itself.
/// </remarks>
public sealed record EccentricReducer : Surface
{
    private readonly StoredNumber largeMm;
    private readonly StoredNumber smallMm;
    private readonly StoredNumber lengthMm;

    /// <summary>Describes a reducer by what was measured.</summary>
    /// <param name="largeEnd">Outside diameter of the large end.</param>
    /// <param name="smallEnd">Outside diameter of the small end.</param>
    /// <param name="length">Between the ends, square to them.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public EccentricReducer(Length largeEnd, Length smallEnd, Length length)
    {
        this.largeMm = new StoredNumber(FittingRanges.DiameterMm(largeEnd, nameof(largeEnd)));
        double small = FittingRanges.DiameterMm(smallEnd, nameof(smallEnd));
        this.smallMm = new StoredNumber(FittingRanges.Within(small, 1, this.LargeMm, nameof(smallEnd)));
        this.lengthMm = new StoredNumber(FittingRanges.ExtentMm(length, nameof(length)));
    }

    /// <summary>Describes a butt-weld reducer by its sizes; the length is that of ASME B16.9, recalled, check before use.</summary>
    /// <param name="largeEnd">Size of the large end.</param>
    /// <param name="smallEnd">Size of the small end.</param>
    /// <exception cref="ArgumentException">The length of that size is not known here.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The small end is wider than the large one.</exception>
    public EccentricReducer(PipeSize largeEnd, PipeSize smallEnd)
        : this(
            (largeEnd ?? throw new ArgumentNullException(nameof(largeEnd))).OutsideDiameter,
            (smallEnd ?? throw new ArgumentNullException(nameof(smallEnd))).OutsideDiameter,
            FittingSizes.ReducerLength(largeEnd)) =>
        this.LengthBasis = FittingSizes.ReducerBasis;

    /// <summary>Outside diameter of the large end.</summary>
    public Length LargeEnd => Length.FromMillimeters(this.LargeMm);

    /// <summary>Outside diameter of the small end.</summary>
    public Length SmallEnd => Length.FromMillimeters(this.SmallMm);

    /// <summary>Length between the ends, square to them.</summary>
    public Length Length => Length.FromMillimeters(this.LengthMm);

    /// <summary>On what the length rests when it was taken from a table; null when it was given.</summary>
    public Basis? LengthBasis { get; }

    /// <summary>The straight side, square to both ends.</summary>
    public Length StraightSide => this.Length;

    /// <summary>The side opposite the straight one, along the steel: what a rule laid on it reads.</summary>
    [BasisOf(typeof(ReducerFormulas), nameof(ReducerFormulas.SlopingSide))]
    public Length SlopingSide => Length.FromMillimeters(
        ReducerKernel.SlopingSideMm(this.LargeMm, this.SmallMm, this.LengthMm, default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(ReducerFormulas), nameof(ReducerFormulas.EccentricArea))]
    public override Area Area => Area.FromSquareMeters(
        ReducerKernel.EccentricSquareMeters(this.LargeMm, this.SmallMm, this.LengthMm, default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture, $"eccentric reducer {this.LargeMm:0.##} to {this.SmallMm:0.##} mm, {this.LengthMm:0.##} mm long");

    internal double LargeMm => this.largeMm.Bare;

    internal double SmallMm => this.smallMm.Bare;

    internal double LengthMm => this.lengthMm.Bare;

    /// <summary>The straight line on the steel that joins like points of both ends: what a rule laid there reads.</summary>
    /// <param name="fromStraightSide">Round either end, from the straight side; 180 degrees is the sloping side. At most a million degrees.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    [BasisOf(typeof(ReducerFormulas), nameof(ReducerFormulas.Generator))]
    public Length Generator(Angle fromStraightSide) => Length.FromMillimeters(ReducerKernel.GeneratorMm(
        this.LargeMm,
        this.SmallMm,
        this.LengthMm,
        AcceptedRange.Between(-1e6, 1e6, "deg").Check(UnitConversions.Degrees(fromStraightSide), nameof(fromStraightSide)),
        default(NoSteps)));

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = ReducerKernel.EccentricSquareMeters(this.LargeMm, this.SmallMm, this.LengthMm, steps);
        return steps.Under("Area of " + this.Description + (this.LengthBasis is { } basis ? $" [length: {basis}]" : string.Empty));
    }
}
