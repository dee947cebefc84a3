using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>What drives current from zinc to steel: the difference of their potentials.</summary>
/// <remarks>It shrinks as the steel is polarised: an anode governs itself. Negative where zinc would take current.</remarks>
public sealed record DrivingVoltage : IHasWorkings
{
    private readonly StoredNumber steelV;
    private readonly StoredNumber zincV;

    /// <summary>Zinc at -1.10 V against copper sulfate, as behind the published factors.</summary>
    /// <param name="steel">Potential of the steel.</param>
    public DrivingVoltage(ElectrodePotential steel)
        : this(steel, ElectrodePotential.FromVolts(GalvanicTables.ZincOpenCircuit, ReferenceElectrode.CopperSulfate))
    {
    }

    /// <summary>Zinc at a potential of its own, for instance of the working anode.</summary>
    /// <param name="steel">Potential of the steel.</param>
    /// <param name="zinc">Potential of the zinc.</param>
    public DrivingVoltage(ElectrodePotential steel, ElectrodePotential zinc)
    {
        this.Steel = steel;
        this.Zinc = zinc;
        this.steelV = new StoredNumber(steel.Against(ReferenceElectrode.CopperSulfate).Volts);
        this.zincV = new StoredNumber(zinc.Against(ReferenceElectrode.CopperSulfate).Volts);
    }

    /// <summary>Potential of the steel.</summary>
    public ElectrodePotential Steel { get; }

    /// <summary>Potential of the zinc.</summary>
    public ElectrodePotential Zinc { get; }

    /// <summary>The driving voltage.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.DrivingVoltage))]
    public ElectricPotential Voltage => ElectricPotential.FromVolts(this.Drive(default(NoSteps)));

    /// <summary>The driving voltage over 0.25 V; 0 where zinc no longer drives, as the published table prints it.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.DrivingFactor))]
    public double Factor => GalvanicKernel.DrivingFactor(this.Drive(default(NoSteps)), default(NoSteps));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = GalvanicKernel.DrivingFactor(this.Drive(steps), steps);
        return steps.Under("Driving voltage");
    }

    /// <summary>The driving voltage as invariant text.</summary>
    public override string ToString() => MeasureText.Write(this.Drive(default(NoSteps)), TradeUnit.Volt, 6);

    private double Drive<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => GalvanicKernel.DrivingVoltage(this.steelV.Bare, this.zincV.Bare, steps);
}
