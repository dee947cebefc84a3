using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>One reading of the thickness of a foil that has been in service: by micrometer, or weighed.</summary>
/// <remarks>
/// Micrometer: what was measured is more than zero and at most 20 mm, over 1 to 100 layers together. Weighed: the zinc of a
/// cut sample after cleaning, over its area. One face of a foil under tape corrodes, so what it lost is what it is thinner.
/// </remarks>
public sealed record FoilReading : IHasWorkings
{
    private readonly StoredNumber togetherUm;
    private readonly StoredNumber grams;
    private readonly StoredNumber squareCm;
    private readonly StoredNumber kilogramsPerM3;
    private readonly StoredNumber thicknessUm;

    private FoilReading(ReadingPreparation preparation, int layers, StoredNumber together = default, StoredNumber grams = default, StoredNumber squareCm = default, StoredNumber density = default)
    {
        AcceptedRange.Between(1, 100, "layers").Check(layers);
        this.Preparation = preparation;
        this.Layers = layers;
        this.togetherUm = together;
        this.grams = grams;
        this.squareCm = squareCm;
        this.kilogramsPerM3 = density;
        double thickness = this.Solve(default(NoSteps));
        this.thicknessUm = new StoredNumber(AcceptedRange.Above(0, "um")
            .Noting("after what was left on is taken off; a hole is no reading: count it as damage").Check(thickness, "thickness"));
    }

    /// <summary>What was done before measuring.</summary>
    public ReadingPreparation Preparation { get; }

    /// <summary>Layers measured together.</summary>
    public int Layers { get; }

    /// <summary>Whether the sample was weighed.</summary>
    public bool IsWeighed => this.grams.IsSet;

    /// <summary>Thickness of the zinc of one foil.</summary>
    public Length Thickness => Length.FromMicrometers(this.Um);

    internal double Um => this.thicknessUm.Bare;

    /// <summary>What the micrometer showed; null for a foil that was weighed.</summary>
    internal double? TogetherUm => this.IsWeighed ? null : this.togetherUm.Bare;

    internal (double Grams, double SquareCm, double KilogramsPerM3) Weight => (this.grams.Bare, this.squareCm.Bare, this.kilogramsPerM3.Bare);

    /// <summary>A reading by micrometer.</summary>
    /// <param name="together">What the micrometer showed, more than zero and at most 20 mm.</param>
    /// <param name="preparation">What was done before.</param>
    /// <param name="layers">Layers measured together.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or nothing is left once what was left on is taken off.</exception>
    public static FoilReading Measured(Length together, ReadingPreparation preparation, int layers = 1)
    {
        ArgumentNullException.ThrowIfNull(preparation);
        double um = AcceptedRange.AboveUpTo(0, 20_000, "um").Noting("a hole is no reading: count it as damage")
            .Check(UnitConversions.Micrometers(together), nameof(together));
        return new(preparation, layers, together: new StoredNumber(um));
    }

    /// <summary>A cut sample, weighed after its corrosion products, adhesive and facing are off.</summary>
    /// <param name="area">Area of the sample, one face, more than zero.</param>
    /// <param name="cleaned">Mass after cleaning, more than zero.</param>
    /// <param name="beforeCleaning">Mass before cleaning, at least that after: an order of the two that cannot be is refused.</param>
    /// <param name="note">How it was cleaned; what cleaning itself takes off sound zinc belongs back onto the mass.</param>
    /// <param name="density">Density of the foil; left out: <see cref="Zinc.Density"/>.</param>
    /// <param name="layers">Layers weighed together.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static FoilReading Weighed(Area area, Mass cleaned, Mass beforeCleaning, string note, Density? density = null, int layers = 1)
    {
        double squareCm = AcceptedRange.Above(0, "cm2").Check(UnitConversions.SquareCentimeters(area), nameof(area));
        double grams = AcceptedRange.Above(0, "g").Check(UnitConversions.Grams(cleaned), nameof(cleaned));
        AcceptedRange.AtLeast(grams, "g").Noting("the mass after cleaning").Check(UnitConversions.Grams(beforeCleaning), nameof(beforeCleaning));
        double perM3 = density is { } stated
            ? AcceptedRange.Between(6000, 8000, "kg/m3").Check(UnitConversions.KilogramsPerCubicMeter(stated), nameof(density))
            : Zinc.KilogramsPerCubicMeter;
        return new(
            new ReadingPreparation(true, Length.Zero, note),
            layers,
            grams: new StoredNumber(grams),
            squareCm: new StoredNumber(squareCm),
            density: new StoredNumber(perM3));
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Reading of one foil");
    }

    /// <summary>The reading in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Um:0.##} um, {(this.IsWeighed ? "weighed" : "by micrometer")}, {this.Layers} layer(s) together");

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => this.IsWeighed
        ? ReadingKernel.WeighedUm(this.grams.Bare, this.kilogramsPerM3.Bare, this.squareCm.Bare, this.Layers, steps)
        : ReadingKernel.OneFoilUm(this.togetherUm.Bare, this.Layers, this.Preparation.LeftOnUm, steps);
}
