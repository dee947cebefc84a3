using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>The end of a vessel or a pipe with its straight flange, covered on its outside.</summary>
/// <remarks>
/// <para>The outside is what is covered and what <see cref="Surface.Area"/>, <see cref="Depth"/> and
/// <see cref="OutsideDiameter"/> speak of. Drawings often dimension the inside: then the factory <c>FromInside</c> takes
/// the inside dimensions and the plate thickness, and works out the outside.</para>
/// <para>Diameter: 10 mm to 100 m. Depths and radii: up to 1000 m. Straight flange: 0 to 100 m. Thickness: more than 0, at
/// most 1 m.</para>
/// <para>The area is that of the finished head. A blank's area is smaller, since the plate stretches in forming.</para>
/// </remarks>
public abstract record Head : Surface
{
    private readonly StoredNumber outsideDiameterMm;
    private readonly StoredNumber straightFlangeMm;

    private protected Head(double outsideDiameterMm, double straightFlangeMm, Basis? form = null)
    {
        this.outsideDiameterMm = new StoredNumber(outsideDiameterMm);
        this.straightFlangeMm = new StoredNumber(straightFlangeMm);
        this.FormBasis = form;
    }

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.OutsideDiameterMm);

    /// <summary>Length of the straight flange, which belongs to the head; may be zero.</summary>
    public Length StraightFlange => Length.FromMillimeters(this.StraightFlangeMm);

    /// <summary>Depth of the dish on the outside, without the straight flange: what a crew measures from the tangent line.</summary>
    public Length Depth => Length.FromMillimeters(this.DepthMm);

    /// <summary>On what the form rests when it is that of a standard; null when the dimensions were given.</summary>
    public Basis? FormBasis { get; }

    /// <summary>Area of the dish alone.</summary>
    public Area DishArea => Area.FromSquareMeters(this.DishSquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    [BasisOf(typeof(HeadFormulas), nameof(HeadFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(this.SquareMeters(default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Form} {this.OutsideDiameterMm:0.##} mm outside, {this.DepthMm:0.##} mm deep, straight flange {this.StraightFlangeMm:0.##} mm");

    internal double OutsideDiameterMm => this.outsideDiameterMm.Bare;

    internal double StraightFlangeMm => this.straightFlangeMm.Bare;

    /// <summary>What the head is called.</summary>
    internal abstract string Form { get; }

    /// <summary>Depth on the outside.</summary>
    internal abstract double DepthMm { get; }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.SquareMeters(steps);
        return steps.Under("Area of " + this.Description + (this.FormBasis is { } basis ? $" [form: {basis}]" : string.Empty));
    }

    /// <summary>The section from rim to crown.</summary>
    internal abstract Meridian Meridian { get; }

    /// <summary>Area of the dish on its outside, noting how it was worked out.</summary>
    internal abstract double DishSquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder;

    private double SquareMeters<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        HeadKernel.SquareMeters(this.DishSquareMeters(steps), this.OutsideDiameterMm, this.StraightFlangeMm, steps);
}
