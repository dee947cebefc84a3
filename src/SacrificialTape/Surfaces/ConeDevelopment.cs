using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A right cone unrolled: the sector of a ring on which strips along its generators lie without strain.</summary>
/// <remarks>Equal ends unroll into a rectangle, which has no sector, and are refused. Straight flanges are left out.</remarks>
public sealed record ConeDevelopment : IHasWorkings
{
    private readonly StoredNumber largeMm;
    private readonly StoredNumber smallMm;
    private readonly StoredNumber slantMm;

    /// <summary>Unrolls a reducer.</summary>
    /// <param name="reducer">The reducer.</param>
    /// <exception cref="ArgumentOutOfRangeException">Its ends are equal.</exception>
    public ConeDevelopment(ConcentricReducer reducer)
        : this(
            (reducer ?? throw new ArgumentNullException(nameof(reducer))).LargeMm,
            reducer.SmallMm,
            UnitConversions.Millimeters(reducer.Slant),
            nameof(reducer))
    {
    }

    /// <summary>Unrolls the wall of a column.</summary>
    /// <param name="column">The column; a base plate is left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">Its ends are equal.</exception>
    public ConeDevelopment(TaperedColumn column)
        : this(
            UnitConversions.Millimeters((column ?? throw new ArgumentNullException(nameof(column))).FootOutsideDiameter),
            UnitConversions.Millimeters(column.TopOutsideDiameter),
            UnitConversions.Millimeters(column.Slant),
            nameof(column))
    {
    }

    /// <summary>Unrolls a pointed head.</summary>
    /// <param name="head">The head.</param>
    public ConeDevelopment(ConicalHead head)
        : this(
            (head ?? throw new ArgumentNullException(nameof(head))).OutsideDiameterMm,
            0,
            double.Hypot(head.DepthMm, head.OutsideDiameterMm / 2),
            nameof(head))
    {
    }

    private ConeDevelopment(double largeMm, double smallMm, double slantMm, string parameter)
    {
        AcceptedRange.FromBelow(0, largeMm, "mm").Noting("equal ends are a cylinder, which unrolls into a rectangle").Check(smallMm, parameter);
        this.largeMm = new StoredNumber(largeMm);
        this.smallMm = new StoredNumber(smallMm);
        this.slantMm = new StoredNumber(slantMm);
    }

    /// <summary>Radius of the arc of the low edge.</summary>
    public Length OuterRadius => Length.FromMillimeters(
        ConeDevelopmentKernel.OuterMm(this.largeMm.Bare, this.smallMm.Bare, this.slantMm.Bare, default(NoSteps)));

    /// <summary>Radius of the arc of the small end; zero at a tip.</summary>
    public Length InnerRadius => Length.FromMillimeters(
        ConeDevelopmentKernel.InnerMm(this.largeMm.Bare, this.smallMm.Bare, this.slantMm.Bare, default(NoSteps)));

    /// <summary>Angle of the sector.</summary>
    public Angle Angle => Angle.FromDegrees(
        ConeDevelopmentKernel.AngleDegrees(this.largeMm.Bare, this.smallMm.Bare, this.slantMm.Bare, default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = ConeDevelopmentKernel.OuterMm(this.largeMm.Bare, this.smallMm.Bare, this.slantMm.Bare, steps);
        _ = ConeDevelopmentKernel.InnerMm(this.largeMm.Bare, this.smallMm.Bare, this.slantMm.Bare, steps);
        _ = ConeDevelopmentKernel.AngleDegrees(this.largeMm.Bare, this.smallMm.Bare, this.slantMm.Bare, steps);
        return steps.Under(string.Create(CultureInfo.InvariantCulture, $"Cone {this.largeMm.Bare:0.##} to {this.smallMm.Bare:0.##} mm unrolled"));
    }

    /// <summary>Radii and angle in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"sector {this.OuterRadius.Millimeters:0.#} to {this.InnerRadius.Millimeters:0.#} mm, {this.Angle.Degrees:0.##} deg");
}
