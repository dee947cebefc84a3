using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Resistance of the adhesive times its area, and how it is known.</summary>
/// <remarks>More than 0. It depends on pressure, age and damp, and does not carry over from another kind of joint.</remarks>
public sealed record AdhesiveResistance : IHasWorkings
{
    private readonly StoredNumber ohmCm2;
    private readonly StoredNumber couponOhm;
    private readonly StoredNumber couponCm2;

    /// <summary>States it.</summary>
    /// <param name="resistivity">Resistance times area, more than 0.</param>
    /// <param name="state">How it is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is not above 0, or the state is not known here.</exception>
    public AdhesiveResistance(ContactResistivity resistivity, AdhesiveState state)
    {
        this.ohmCm2 = new StoredNumber(AcceptedRange.Above(0, "ohm.cm2").Check(resistivity.OhmSquareCentimeters, nameof(resistivity)));
        this.State = Enum.IsDefined(state) ? state : throw new ArgumentOutOfRangeException(nameof(state), state, "Not known here.");
    }

    private AdhesiveResistance(double ohm, double cm2, AdhesiveState state)
        : this(ContactResistivity.FromOhmSquareCentimeters(VoltageKernel.CouponOhmCm2(ohm, cm2, default(NoSteps))), state)
    {
        this.couponOhm = new StoredNumber(ohm);
        this.couponCm2 = new StoredNumber(cm2);
    }

    /// <summary>Resistance times area.</summary>
    public ContactResistivity Resistivity => ContactResistivity.FromOhmSquareCentimeters(this.OhmCm2);

    /// <summary>How it is known.</summary>
    public AdhesiveState State { get; }

    internal double OhmCm2 => this.ohmCm2.Bare;

    /// <summary>From a joint that was measured, a coupon or a window.</summary>
    /// <param name="resistance">Its resistance, more than 0.</param>
    /// <param name="area">Its area, more than 0.</param>
    /// <param name="state">Fresh, or aged.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.Coupon))]
    public static AdhesiveResistance FromJoint(ElectricResistance resistance, Area area, AdhesiveState state) => new(
        AcceptedRange.Above(0, "ohm").Check(UnitConversions.Ohms(resistance), nameof(resistance)),
        AcceptedRange.Above(0, "cm2").Check(UnitConversions.SquareCentimeters(area), nameof(area)),
        state);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        if (this.couponOhm.IsSet)
        {
            _ = VoltageKernel.CouponOhmCm2(this.couponOhm.Bare, this.couponCm2.Bare, steps);
        }

        return steps.Under("Resistance of the adhesive");
    }

    /// <summary>Value and state in a few words.</summary>
    public override string ToString() => $"{MeasureText.Write(this.OhmCm2, TradeUnit.OhmSquareCentimeter, 6)}, {(this.State switch
    {
        AdhesiveState.Fresh => "fresh",
        AdhesiveState.Measured => "measured on an aged joint",
        _ => "assumed for the end of life",
    })}";
}
