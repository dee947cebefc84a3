using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>How far zinc reaches when oxygen, not potential, sets the current of the steel: sqrt(2 sigma d U / i_L).</summary>
/// <remarks>Potential that may be lost: more than 0, at most 1 V. Limiting current: more than 0.</remarks>
public sealed record OxygenReach : IHasWorkings
{
    private readonly StoredNumber dropV;
    private readonly StoredNumber limit;

    /// <summary>Describes a reach.</summary>
    /// <param name="film">The film.</param>
    /// <param name="drop">Potential that may be lost between the edge and the farthest protected point.</param>
    /// <param name="limit">Cathodic current density of the steel.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public OxygenReach(ThinFilm film, ElectricPotential drop, ElectricCurrentDensity limit)
    {
        ArgumentNullException.ThrowIfNull(film);
        this.Film = film;
        this.dropV = new StoredNumber(AcceptedRange.AboveUpTo(0, 1, "V").Check(UnitConversions.Volts(drop), nameof(drop)));
        this.limit = new StoredNumber(AcceptedRange.Above(0, "A/m2").Check(UnitConversions.AmperesPerSquareMeter(limit), nameof(limit)));
    }

    /// <summary>The film.</summary>
    public ThinFilm Film { get; }

    /// <summary>The reach.</summary>
    [BasisOf(typeof(ReachFormulas), nameof(ReachFormulas.OxygenReach))]
    public Length Reach => Length.FromMillimeters(this.Solve(default(NoSteps)));

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Reach while oxygen limits the current");
    }

    /// <summary>Film, drop and current in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.dropV.Bare:0.####} V under {this.Film}, {this.limit.Bare:0.######} A/m2");

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder =>
        ReachKernel.OxygenReach(this.Film.SiemensPerM, this.Film.Um, this.dropV.Bare, this.limit.Bare, steps);
}
