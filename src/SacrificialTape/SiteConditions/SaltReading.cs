using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.SiteConditions;

/// <summary>Soluble salts on a surface from the conductivity of water that washed a patch of it (ISO 8502-6 and -9).</summary>
/// <remarks>
/// Water 1 to 100 ml, patch 100 to 100 000 mm2, conductivities 0 to 20 000 uS/cm, after at least before. The factor holds
/// for a mixture of salts at about 20 to 25 degC; what water does not wash out is not found.
/// </remarks>
public sealed record SaltReading : IHasWorkings
{
    private readonly StoredNumber milliliters;
    private readonly StoredNumber mm2;
    private readonly StoredNumber before;
    private readonly StoredNumber after;

    /// <summary>Describes the reading.</summary>
    /// <param name="water">Water that washed the patch.</param>
    /// <param name="patch">Area of the patch.</param>
    /// <param name="before">Conductivity of the water before.</param>
    /// <param name="after">Conductivity of the water after.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public SaltReading(Volume water, Area patch, ElectricConductivity before, ElectricConductivity after)
    {
        this.milliliters = new StoredNumber(AcceptedRange.Between(1, 100, "ml").Check(UnitConversions.Milliliters(water), nameof(water)));
        this.mm2 = new StoredNumber(AcceptedRange.Between(100, 100_000, "mm2").Check(UnitConversions.SquareMillimeters(patch), nameof(patch)));
        double clean = AcceptedRange.Between(0, 20_000, "uS/cm").Check(UnitConversions.MicrosiemensPerCentimeter(before), nameof(before));
        this.before = new StoredNumber(clean);
        this.after = new StoredNumber(AcceptedRange.Between(clean, 20_000, "uS/cm").Noting("at least that before")
            .Check(UnitConversions.MicrosiemensPerCentimeter(after), nameof(after)));
    }

    /// <summary>Water that washed the patch.</summary>
    public Volume Water => Volume.FromMilliliters(this.milliliters.Bare);

    /// <summary>Area of the patch.</summary>
    public Area Patch => Area.FromSquareMillimeters(this.mm2.Bare);

    /// <summary>Conductivity of the water before.</summary>
    public ElectricConductivity Before => ElectricConductivity.FromMicrosiemensPerCentimeter(this.before.Bare);

    /// <summary>Conductivity of the water after.</summary>
    public ElectricConductivity After => ElectricConductivity.FromMicrosiemensPerCentimeter(this.after.Bare);

    /// <summary>Salts on the surface.</summary>
    public AreaDensity Salts => AreaDensity.FromMilligramsPerSquareMeter(this.Solve(default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Soluble salts by conductivity");
    }

    /// <summary>Readings and salts as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.before.Bare:0.###} to {this.after.Bare:0.###} uS/cm in {this.milliliters.Bare:0.###} ml from {this.mm2.Bare:0.###} mm2: {this.Solve(default(NoSteps)):0.###} mg/m2");

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        SaltKernel.MilligramsPerM2(this.milliliters.Bare, this.mm2.Bare, this.after.Bare, this.before.Bare, steps);
}
