using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>A flat anode flush on its structure, immersed or buried: its resistance to remote water and the current it can give.</summary>
/// <remarks>For deep water or soil all round; under a thin film the reach is what counts. Resistivity and area: more than 0.</remarks>
public sealed record FlushAnode : IHasWorkings
{
    private readonly StoredNumber ohmM;
    private readonly StoredNumber areaM2;
    private readonly StoredNumber driveV;

    /// <summary>Describes an anode.</summary>
    /// <param name="exposed">Its exposed area.</param>
    /// <param name="resistivity">Resistivity of the water or soil.</param>
    /// <param name="drive">Driving voltage, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not positive.</exception>
    public FlushAnode(Area exposed, ElectricResistivity resistivity, ElectricPotential drive)
    {
        this.areaM2 = new StoredNumber(AcceptedRange.Above(0, "m2").Check(UnitConversions.SquareMeters(exposed), nameof(exposed)));
        this.ohmM = new StoredNumber(AcceptedRange.Above(0, "ohm.m").Check(UnitConversions.OhmMeters(resistivity), nameof(resistivity)));
        this.driveV = new StoredNumber(AcceptedRange.Above(0, "V").Check(UnitConversions.Volts(drive), nameof(drive)));
    }

    /// <summary>Its resistance.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.FlushResistance))]
    public ElectricResistance Resistance => ElectricResistance.FromOhms(
        GalvanicKernel.FlushResistance(this.ohmM.Bare, this.areaM2.Bare, default(NoSteps)));

    /// <summary>The current it can give.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.FlushCurrent))]
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(this.Solve(default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Current of a flush anode");
    }

    /// <summary>The anode in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.areaM2.Bare:0.######} m2 of anode in {this.ohmM.Bare:0.######} ohm.m, {this.driveV.Bare:0.####} V");

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        GalvanicKernel.FlushCurrent(this.driveV.Bare, GalvanicKernel.FlushResistance(this.ohmM.Bare, this.areaM2.Bare, steps), steps);
}
