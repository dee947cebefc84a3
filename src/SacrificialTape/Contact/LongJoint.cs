using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Foil stuck to bare steel over a length, with current entering at one end: most of it passes within the transfer length.</summary>
/// <remarks>Adhesive resistance: more than 0. The steel is taken to conduct without loss, since it is far thicker than the foil.</remarks>
public sealed record LongJoint : IHasWorkings
{
    private readonly StoredNumber ohmCm2;

    /// <summary>Describes a joint.</summary>
    /// <param name="joined">The length of strip that lies on bare steel.</param>
    /// <param name="adhesive">Adhesive resistance times area.</param>
    /// <exception cref="ArgumentOutOfRangeException">The adhesive resistance is not above 0.</exception>
    public LongJoint(StripPath joined, ContactResistivity adhesive)
    {
        ArgumentNullException.ThrowIfNull(joined);
        this.Joined = joined;
        this.ohmCm2 = new StoredNumber(AcceptedRange.Above(0, "ohm.cm2").Check(adhesive.OhmSquareCentimeters, nameof(adhesive)));
    }

    /// <summary>The length of strip on bare steel.</summary>
    public StripPath Joined { get; }

    /// <summary>Adhesive resistance times area.</summary>
    public ContactResistivity Adhesive => ContactResistivity.FromOhmSquareCentimeters(this.ohmCm2.Bare);

    /// <summary>Over this length most of the current passes into the steel.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.TransferLength))]
    public Length TransferLength => Length.FromMillimeters(
        VoltageKernel.TransferMm(this.ohmCm2.Bare, this.Joined.Sheet.SquareOhm(default(NoSteps)), default(NoSteps)));

    /// <summary>Resistance of the joint, seen from its end.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.LongJoint))]
    public ElectricResistance Resistance => ElectricResistance.FromOhms(this.Ohm(default(NoSteps)));

    /// <summary>What the adhesive alone would resist, as if current entered evenly: the least.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.Adhesive))]
    public ElectricResistance AdhesiveAlone => ElectricResistance.FromOhms(
        VoltageKernel.AdhesiveOhm(this.ohmCm2.Bare, this.Cm2, default(NoSteps)));

    private double Cm2 => this.Joined.LengthMm * this.Joined.WidthMm / 100;

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = VoltageKernel.AdhesiveOhm(this.ohmCm2.Bare, this.Cm2, steps);
        _ = this.Ohm(steps);
        return steps.Under("Long joint of foil on steel");
    }

    /// <summary>Length, width and adhesive in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Joined} on bare steel, {this.ohmCm2.Bare:G6} ohm.cm2");

    private double Ohm<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double square = this.Joined.Sheet.SquareOhm(steps);
        double transfer = VoltageKernel.TransferMm(this.ohmCm2.Bare, square, steps);
        return VoltageKernel.LongJointOhm(square, this.ohmCm2.Bare, this.Joined.WidthMm, this.Joined.LengthMm, transfer, steps);
    }
}
