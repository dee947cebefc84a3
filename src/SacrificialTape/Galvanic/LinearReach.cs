using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>How far a potential at the edge of linear steel protects it: on endless steel, and to the middle of a gap.</summary>
/// <remarks>
/// The potential at the edge is that of the couple, which lies above zinc's own: it must be below the one that the
/// criterion asks for, and that below the rest potential of the steel.
/// </remarks>
public sealed record LinearReach : IHasWorkings
{
    private readonly StoredNumber edgeV;
    private readonly StoredNumber wantedV;

    /// <summary>Describes a reach.</summary>
    /// <param name="film">The film.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="edge">Potential at its edge.</param>
    /// <param name="criterion">When it counts as protected.</param>
    /// <exception cref="ArgumentOutOfRangeException">The potentials do not lie in the order edge, criterion, rest.</exception>
    public LinearReach(ThinFilm film, LinearElectrode steel, ElectrodePotential edge, ProtectionCriterion criterion)
    {
        ArgumentNullException.ThrowIfNull(film);
        ArgumentNullException.ThrowIfNull(steel);
        ArgumentNullException.ThrowIfNull(criterion);
        this.Film = film;
        this.Steel = steel;
        this.Edge = edge;
        this.Criterion = criterion;
        double wanted = AcceptedRange.Inside(-4, steel.RestCalomel, "V").Noting("SCE; below the rest potential of the steel")
            .Check(criterion.ThresholdCalomel(steel.RestCalomel), nameof(criterion));
        this.wantedV = new StoredNumber(wanted);
        this.edgeV = new StoredNumber(AcceptedRange.Inside(-4, wanted, "V").Noting("SCE; below the potential that the criterion asks for")
            .Check(edge.VoltsCalomel, nameof(edge)));
    }

    /// <summary>The film.</summary>
    public ThinFilm Film { get; }

    /// <summary>The steel.</summary>
    public LinearElectrode Steel { get; }

    /// <summary>Potential at its edge.</summary>
    public ElectrodePotential Edge { get; }

    /// <summary>When it counts as protected.</summary>
    public ProtectionCriterion Criterion { get; }

    /// <summary>Decay length on the steel.</summary>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.SteelDecay))]
    public Length DecayLength => Length.FromMillimeters(this.Decay(default(NoSteps)));

    /// <summary>Reach on steel without end.</summary>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.HalfSpaceReach))]
    public Length OnEndlessSteel => Length.FromMillimeters(ReachKernel.HalfSpaceReach(
        this.Decay(default(NoSteps)), this.edgeV.Bare, this.Steel.RestCalomel, this.wantedV.Bare, default(NoSteps)));

    /// <summary>Reach to the middle of a gap with tape on both sides.</summary>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.HalfGapReach))]
    public Length ToMiddleOfGap => Length.FromMillimeters(ReachKernel.HalfGapReach(
        this.Decay(default(NoSteps)), this.edgeV.Bare, this.Steel.RestCalomel, this.wantedV.Bare, default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        double decay = this.Decay(steps);
        _ = ReachKernel.HalfSpaceReach(decay, this.edgeV.Bare, this.Steel.RestCalomel, this.wantedV.Bare, steps);
        _ = ReachKernel.HalfGapReach(decay, this.edgeV.Bare, this.Steel.RestCalomel, this.wantedV.Bare, steps);
        return steps.Under("Reach along steel, linear");
    }

    /// <summary>What reaches how far in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Steel.Name} from {this.Edge} under {this.Film}");

    private double Decay<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        ReachKernel.SteelDecay(this.Film.SiemensPerM, this.Film.Um, this.Steel.OhmM2, steps);
}
