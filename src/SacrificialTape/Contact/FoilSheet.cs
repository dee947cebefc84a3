using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>The foil as a sheet that conducts: the resistance of a square of it, whatever its size.</summary>
/// <remarks>Zinc left: more than 0, at most 10 mm. Resistivity: more than 0, at most 1 ohm.m. Foil thins as it goes: give what is left at the end.</remarks>
public sealed record FoilSheet : IHasWorkings
{
    private const double ZincOhmM = 5.90e-8;

    private readonly StoredNumber um;
    private readonly StoredNumber ohmM;
    private readonly StoredNumber degC;

    /// <summary>Zinc at a temperature.</summary>
    /// <param name="thicknessLeft">Thickness of zinc left.</param>
    /// <param name="temperature">Its temperature, -60 to 100 degC; left out: 20 degC.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public FoilSheet(Length thicknessLeft, Temperature? temperature = null)
        : this(thicknessLeft, ZincOhmM) => this.degC = new StoredNumber(AcceptedRange.Between(-60, 100, "degC")
            .Check(temperature is { } given ? UnitConversions.DegreesCelsius(given) : 20, nameof(temperature)));

    private FoilSheet(Length thicknessLeft, double resistivityOhmM)
    {
        this.um = new StoredNumber(AcceptedRange.AboveUpTo(0, 10_000, "um").Check(UnitConversions.Micrometers(thicknessLeft), nameof(thicknessLeft)));
        this.ohmM = new StoredNumber(resistivityOhmM);
    }

    /// <summary>Thickness of metal left.</summary>
    public Length ThicknessLeft => Length.FromMicrometers(this.um.Bare);

    /// <summary>Resistivity at its temperature.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.AtTemperature))]
    public ElectricResistivity Resistivity => ElectricResistivity.FromOhmMeters(this.OhmM(default(NoSteps)));

    /// <summary>Resistance of a square.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.SheetResistance))]
    public ElectricResistance Square => ElectricResistance.FromOhms(this.SquareOhm(default(NoSteps)));

    /// <summary>A sheet of a metal of known resistivity.</summary>
    /// <param name="thicknessLeft">Thickness of metal left.</param>
    /// <param name="resistivity">Its resistivity.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FoilSheet OfMetal(Length thicknessLeft, ElectricResistivity resistivity) =>
        new(thicknessLeft, AcceptedRange.AboveUpTo(0, 1, "ohm.m").Check(UnitConversions.OhmMeters(resistivity), nameof(resistivity)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.SquareOhm(steps);
        return steps.Under("Resistance of a square of foil");
    }

    /// <summary>Thickness and resistance in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.um.Bare:0.###} um, {this.SquareOhm(default(NoSteps)) * 1000:G4} mohm a square");

    internal double SquareOhm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => VoltageKernel.SheetOhm(this.OhmM(steps), this.um.Bare, steps);

    private double OhmM<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        this.degC.IsSet ? VoltageKernel.AtTemperature(this.ohmM.Bare, this.degC.Bare, steps) : this.ohmM.Bare;
}
