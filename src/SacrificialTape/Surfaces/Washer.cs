using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>Flat rings of tape, as laid under bolt heads or round studs; the area is that of one face of all of them.</summary>
/// <remarks>
/// Outside diameter: 1 mm to 100 m. Inside diameter: at least 1 mm and less than the outside. Count: 1 to 1 000 000. How
/// many a strip yields: <see cref="WasherCutting"/>. Bolts of high strength need advice before zinc touches them.
/// </remarks>
public sealed record Washer : Surface
{
    private const int MostCount = 1_000_000;

    private readonly StoredNumber outsideMm;
    private readonly StoredNumber insideMm;

    /// <summary>Describes washers of one size.</summary>
    /// <param name="outsideDiameter">Of the ring.</param>
    /// <param name="insideDiameter">Of its hole.</param>
    /// <param name="count">How many.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Washer(Length outsideDiameter, Length insideDiameter, int count = 1)
    {
        double outside = FittingRanges.DiameterMm(outsideDiameter, nameof(outsideDiameter));
        this.outsideMm = new StoredNumber(outside);
        this.insideMm = new StoredNumber(FittingRanges.LessThan(insideDiameter, outside, nameof(insideDiameter)));
        this.Count = count is >= 1 and <= MostCount
            ? count
            : throw AcceptedRange.Between(1, MostCount, string.Empty).Refuse(count, nameof(count));
    }

    /// <summary>Outside diameter.</summary>
    public Length OutsideDiameter => Length.FromMillimeters(this.OutsideMm);

    /// <summary>Inside diameter.</summary>
    public Length InsideDiameter => Length.FromMillimeters(this.InsideMm);

    /// <summary>How many.</summary>
    public int Count { get; }

    /// <inheritdoc/>
    [BasisOf(typeof(SupportFormulas), nameof(SupportFormulas.Washers))]
    public override Area Area => Area.FromSquareMeters(
        SupportKernel.WashersSquareMeters(this.OutsideMm, this.InsideMm, this.Count, default(NoSteps)));

    /// <inheritdoc/>
    public override string Description => string.Create(
        CultureInfo.InvariantCulture, $"{this.Count} washer(s) {this.OutsideMm:0.##} mm outside, {this.InsideMm:0.##} mm inside");

    internal double OutsideMm => this.outsideMm.Bare;

    internal double InsideMm => this.insideMm.Bare;

    /// <inheritdoc/>
    public override Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = SupportKernel.WashersSquareMeters(this.OutsideMm, this.InsideMm, this.Count, steps);
        return steps.Under("Area of " + this.Description);
    }
}
