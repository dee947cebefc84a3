using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>What resists where metal touches metal in a few round spots: foil pressed onto bare steel without adhesive between, or particles in the adhesive.</summary>
/// <remarks>
/// One resistivity on both sides; of two metals, their mean. Two published forms say how spots influence each other. They
/// differ: 3 pi/32 = 0.2945 against 1/pi = 0.3183 in the same place. Both are shown, none is chosen.
/// </remarks>
public sealed record SpotCluster : IHasWorkings
{
    private readonly StoredNumber oneOhmM;
    private readonly StoredNumber otherOhmM;
    private readonly StoredNumber sumUm;
    private readonly StoredNumber spacingUm;

    /// <summary>Describes a cluster.</summary>
    /// <param name="one">Resistivity of one metal.</param>
    /// <param name="other">Resistivity of the other.</param>
    /// <param name="spots">The spots, one or more, none within another.</param>
    /// <exception cref="ArgumentOutOfRangeException">A resistivity is not above 0 or over 1 ohm.m, there is no spot, or two overlap.</exception>
    public SpotCluster(ElectricResistivity one, ElectricResistivity other, IEnumerable<ContactSpot> spots)
    {
        ValueList<ContactSpot> allSpots = spots.Listed();
        AcceptedRange accepted = AcceptedRange.AboveUpTo(0, 1, "ohm.m");
        this.oneOhmM = new StoredNumber(accepted.Check(UnitConversions.OhmMeters(one), nameof(one)));
        this.otherOhmM = new StoredNumber(accepted.Check(UnitConversions.OhmMeters(other), nameof(other)));
        AcceptedRange.Between(1, 10_000, "spots").Check(allSpots.Count, nameof(spots));
        this.Spots = allSpots;
        double inverse = 0;
        for (int i = 0; i < allSpots.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                double apart = double.Hypot(allSpots[i].XUm - allSpots[j].XUm, allSpots[i].YUm - allSpots[j].YUm);
                AcceptedRange.AtLeast((allSpots[i].RadiusUm + allSpots[j].RadiusUm) * (1 - WithAllowance.RelativeAllowance), "um").Noting("the two radii").Check(apart, nameof(spots));
                inverse += 2 / apart;
            }
        }

        this.sumUm = new StoredNumber(allSpots.Sum(static spot => spot.RadiusUm));
        if (inverse > 0)
        {
            this.spacingUm = new StoredNumber(1 / inverse);
        }
    }

    /// <summary>The spots.</summary>
    public ValueList<ContactSpot> Spots { get; }

    /// <summary>Resistance of the first spot alone, by the two metals.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.TwoMetalSpot))]
    public ElectricResistance FirstAlone => ElectricResistance.FromOhms(
        VoltageKernel.TwoMetalSpotOhm(this.oneOhmM.Bare, this.otherOhmM.Bare, this.Spots[0].RadiusUm, default(NoSteps)));

    /// <summary>Resistance as if the spots lay far apart: the least.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.SpotsFarApart))]
    public ElectricResistance FarApart => ElectricResistance.FromOhms(VoltageKernel.FarApartOhm(this.MeanOhmM, this.sumUm.Bare, default(NoSteps)));

    /// <summary>Resistance with their influence, the form with 3 pi/32.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.SpotsHolm))]
    public ElectricResistance ByHolm => this.spacingUm.IsSet
        ? ElectricResistance.FromOhms(VoltageKernel.HolmOhm(this.MeanOhmM, this.sumUm.Bare, this.Spots.Count, this.spacingUm.Bare, default(NoSteps)))
        : this.FarApart;

    /// <summary>Resistance with their influence, the form with 1/pi, which also follows from adding potentials.</summary>
    [BasisOf(typeof(VoltageFormulas), nameof(VoltageFormulas.SpotsGreenwood))]
    public ElectricResistance ByGreenwood => this.spacingUm.IsSet
        ? ElectricResistance.FromOhms(VoltageKernel.GreenwoodOhm(this.MeanOhmM, this.sumUm.Bare, this.Spots.Count, this.spacingUm.Bare, default(NoSteps)))
        : this.FarApart;

    private double MeanOhmM => (this.oneOhmM.Bare + this.otherOhmM.Bare) / 2;

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = VoltageKernel.TwoMetalSpotOhm(this.oneOhmM.Bare, this.otherOhmM.Bare, this.Spots[0].RadiusUm, steps);
        _ = VoltageKernel.FarApartOhm(this.MeanOhmM, this.sumUm.Bare, steps);
        if (this.spacingUm.IsSet)
        {
            _ = VoltageKernel.HolmOhm(this.MeanOhmM, this.sumUm.Bare, this.Spots.Count, this.spacingUm.Bare, steps);
            _ = VoltageKernel.GreenwoodOhm(this.MeanOhmM, this.sumUm.Bare, this.Spots.Count, this.spacingUm.Bare, steps);
        }

        return steps.Under("Resistance of spots of contact");
    }

    /// <summary>Count and both forms in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Spots.Count} spot(s), {this.ByHolm.Ohms:G6} ohm by form A, {this.ByGreenwood.Ohms:G6} ohm by form B");
}
