using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>Output of one packaged anode in soil by the handbook formula i = C f y / P, and how many a demand needs.</summary>
/// <remarks>
/// <para>In the units of its source: i in mA, P in ohm.cm, C in mA.ohm.cm. For anodes about 10 ft from the structure. It is
/// the classical way for cast anodes and stands here to hold designs beside it; tape is no such anode.</para>
/// <para>Range: soil from 500 ohm.cm (5 ohm.m), size factor 0.1 to 10, potential factor 0 to 2.</para>
/// </remarks>
public sealed record SoilAnode : IHasWorkings
{
    private readonly StoredNumber ohmM;

    /// <summary>Describes an anode.</summary>
    /// <param name="kind">Metal and state of the structure.</param>
    /// <param name="sizeFactor">Size factor f: 1.00 for the packaged 17 lb, 0.71 for the 9 lb.</param>
    /// <param name="potentialFactor">Factor y of the structure's potential; of zinc that is <see cref="DrivingVoltage.Factor"/>.</param>
    /// <param name="soil">Resistivity of the soil.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or there is no such kind.</exception>
    public SoilAnode(SoilAnodeKind kind, double sizeFactor, double potentialFactor, ElectricResistivity soil)
    {
        this.Kind = Enum.IsDefined(kind)
            ? kind
            : throw new ArgumentOutOfRangeException(nameof(kind), kind, "No constant is known for such an anode.");
        this.SizeFactor = AcceptedRange.Between(0.1, 10, string.Empty).Noting("the size factor f").Check(sizeFactor);
        this.PotentialFactor = AcceptedRange.Between(0, 2, string.Empty).Noting("the potential factor y").Check(potentialFactor);
        this.ohmM = new StoredNumber(AcceptedRange.AtLeast(5, "ohm.m").Noting("500 ohm.cm, where the formula begins to hold")
            .Check(UnitConversions.OhmMeters(soil), nameof(soil)));
    }

    /// <summary>Metal and state of the structure.</summary>
    public SoilAnodeKind Kind { get; }

    /// <summary>Size factor f.</summary>
    public double SizeFactor { get; }

    /// <summary>Potential factor y.</summary>
    public double PotentialFactor { get; }

    /// <summary>Resistivity of the soil.</summary>
    public ElectricResistivity Soil => ElectricResistivity.FromOhmMeters(this.ohmM.Bare);

    /// <summary>On what the constant rests.</summary>
    public Basis Basis => this.Kind == SoilAnodeKind.MagnesiumWellCoated ? GalvanicSources.SoilAnodeMagnesium : GalvanicSources.SoilAnodeZinc;

    /// <summary>The current that one anode gives.</summary>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.SoilAnodeOutput))]
    public ElectricCurrent Output => ElectricCurrent.FromAmperes(this.Give(default(NoSteps)));

    /// <summary>The least number of anodes that give a demand; always rounded up.</summary>
    /// <param name="demand">Current of the whole structure, zero or more.</param>
    /// <param name="each">Current of one anode, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A current is outside its range, or the number is above 1 000 000.</exception>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.AnodeNumber))]
    public static int Number(ElectricCurrent demand, ElectricCurrent each) => (int)AcceptedRange.Between(0, 1e6, "anodes").Check(
        GalvanicKernel.AnodeNumber(
            AcceptedRange.AtLeast(0, "A").Check(UnitConversions.Amperes(demand), nameof(demand)),
            AcceptedRange.Above(0, "A").Check(UnitConversions.Amperes(each), nameof(each)),
            default(NoSteps)),
        nameof(demand));

    /// <summary>The least number of these anodes that give a demand.</summary>
    /// <param name="demand">Current of the whole structure, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The demand is negative, this anode gives nothing, or the number is above 1 000 000.</exception>
    [BasisOf(typeof(GalvanicFormulas), nameof(GalvanicFormulas.AnodeNumber))]
    public int Number(ElectricCurrent demand) => Number(demand, this.Output);

    /// <summary>The steps to the output.</summary>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Give(steps);
        return steps.Under("Output of an anode in soil").RestingOn(this.Basis);
    }

    /// <summary>The steps to the output and to the number for a demand.</summary>
    /// <param name="demand">Current of the whole structure, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The demand is negative, or this anode gives nothing.</exception>
    public Workings ShowNumber(ElectricCurrent demand)
    {
        _ = this.Number(demand);
        var steps = new StepList();
        _ = GalvanicKernel.AnodeNumber(UnitConversions.Amperes(demand), this.Give(steps), steps);
        return steps.Under("Number of anodes in soil");
    }

    /// <summary>The anode in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Kind}, f = {this.SizeFactor:0.###}, y = {this.PotentialFactor:0.###}, {this.ohmM.Bare * 100:0.###} ohm.cm: {this.Give(default(NoSteps)) * 1000:0.###} mA");

    private double Give<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => GalvanicKernel.SoilAnodeOutput(
            GalvanicTables.SoilAnodeConstant(this.Kind), this.SizeFactor, this.PotentialFactor, this.ohmM.Bare, steps);
}
