using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>A straight structural section, covered on the faces along its length; cut ends are not part of it.</summary>
/// <remarks>
/// Dimensions are those of the outside, in mm as a caliper reads them. Length: 1 mm to 1000 m. The inside of a hollow
/// section is not covered.
/// </remarks>
public abstract record Section : Surface
{
    private readonly StoredNumber lengthMm;

    private protected Section(Length length, Basis? sizeBasis)
    {
        this.lengthMm = new StoredNumber(FittingRanges.ExtentMm(length, nameof(length)));
        this.SizeBasis = sizeBasis;
    }

    /// <summary>Length along the section.</summary>
    public Length Length => Length.FromMillimeters(this.lengthMm.Bare);

    /// <summary>Length of the outline: what a string laid into every corner reads.</summary>
    [BasisOf(typeof(SectionFormulas), nameof(SectionFormulas.I))]
    [BasisOf(typeof(SectionFormulas), nameof(SectionFormulas.Channel))]
    [BasisOf(typeof(SectionFormulas), nameof(SectionFormulas.Angle))]
    [BasisOf(typeof(SectionFormulas), nameof(SectionFormulas.Tee))]
    [BasisOf(typeof(SectionFormulas), nameof(SectionFormulas.RectangularHollow))]
    [BasisOf(typeof(SectionFormulas), nameof(SectionFormulas.CircularHollow))]
    public Length Perimeter => Length.FromMillimeters(this.PerimeterMm(default(NoSteps)));

    /// <summary>On what the dimensions rest when they were taken from a table; null when they were given.</summary>
    public Basis? SizeBasis { get; }

    /// <summary>
    /// Arrises, round corners and fillets in order round the outline, from the beginning of the first face; none for a
    /// circle. Which face is the first, each section says.
    /// </summary>
    public ValueList<Fold> Folds => new(this.Outline(default(NoSteps))?.Folds ?? []);

    /// <inheritdoc/>
    [BasisOf(typeof(SectionFormulas), nameof(SectionFormulas.Area))]
    public override Area Area => Area.FromSquareMeters(
        SectionKernel.SquareMeters(this.PerimeterMm(default(NoSteps)), this.lengthMm.Bare, default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(CultureInfo.InvariantCulture, $"{this.Form}, {this.lengthMm.Bare / 1000:0.###} m long");

    internal abstract string Form { get; }

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = SectionKernel.SquareMeters(this.PerimeterMm(steps), this.lengthMm.Bare, steps);
        return steps.Under("Area of " + this.Description + (this.SizeBasis is { } basis ? $" [dimensions: {basis}]" : string.Empty));
    }

    internal double LengthMm => this.lengthMm.Bare;

    internal abstract double PerimeterMm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder;

    /// <summary>Faces and folds; null for a circle, which has none.</summary>
    internal abstract SectionOutline? Outline<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder;
}
