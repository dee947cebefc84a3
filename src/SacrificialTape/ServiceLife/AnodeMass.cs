using System.Globalization;
using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>The mass of anode that gives a current for a life, in either of the classical forms.</summary>
/// <remarks>Current and life: more than 0. The current is the mean over the life.</remarks>
public sealed record AnodeMass : IHasWorkings
{
    private readonly StoredNumber amperes;
    private readonly StoredNumber years;
    private readonly StoredNumber usable;
    private readonly StoredNumber capacity;
    private readonly StoredNumber consumption;
    private readonly StoredNumber efficiency;

    /// <summary>By practical capacity: W = 8760 I t/(u Q).</summary>
    /// <param name="capacity">The practical capacity.</param>
    /// <param name="usable">Utilisation.</param>
    /// <param name="mean">Current on the mean.</param>
    /// <param name="life">The life.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public AnodeMass(PracticalCapacity capacity, Utilisation usable, ElectricCurrent mean, Duration life)
        : this(mean, life, usable)
    {
        ArgumentNullException.ThrowIfNull(capacity);
        this.capacity = new StoredNumber(capacity.AmpereHoursPerKilogram);
    }

    private AnodeMass(ElectricCurrent mean, Duration life, AnodeConsumption theoretical, CurrentEfficiency efficiency, Utilisation usable)
        : this(mean, life, usable)
    {
        this.consumption = new StoredNumber(theoretical.KilogramsPerAmpereYear);
        this.efficiency = new StoredNumber(efficiency.Fraction);
    }

    private AnodeMass(ElectricCurrent mean, Duration life, Utilisation usable)
    {
        this.amperes = new StoredNumber(AcceptedRange.Above(0, "A").Check(UnitConversions.Amperes(mean), nameof(mean)));
        this.years = new StoredNumber(AcceptedRange.Above(0, "a").Check(UnitConversions.Years(life), nameof(life)));
        this.usable = new StoredNumber(usable.Fraction);
    }

    /// <summary>The mass.</summary>
    [BasisOf(typeof(HolidayFormulas), nameof(HolidayFormulas.AnodeMass))]
    [BasisOf(typeof(HolidayFormulas), nameof(HolidayFormulas.AnodeMassByConsumption))]
    public Mass Mass => UnitConversions.FromKilograms(this.Solve(default(NoSteps)));

    /// <summary>By consumption: W = t S I/(eta u), for anodes of any metal.</summary>
    /// <param name="theoretical">Consumption at full efficiency.</param>
    /// <param name="efficiency">Efficiency; 1 where the consumption already contains it.</param>
    /// <param name="usable">Utilisation; 1 where the form has none.</param>
    /// <param name="mean">Current on the mean.</param>
    /// <param name="life">The life.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static AnodeMass ByConsumption(
        AnodeConsumption theoretical, CurrentEfficiency efficiency, Utilisation usable, ElectricCurrent mean, Duration life) =>
        new(mean, life, theoretical, efficiency, usable);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Mass of an anode");
    }

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => this.capacity.IsSet
            ? HolidayKernel.Mass(this.amperes.Bare, this.years.Bare, this.usable.Bare, this.capacity.Bare, steps)
            : HolidayKernel.MassByConsumption(
                this.years.Bare, this.consumption.Bare, this.amperes.Bare, this.efficiency.Bare, this.usable.Bare, steps);

    /// <summary>Mass, current and life in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Solve(default(NoSteps)):0.####} kg for {this.amperes.Bare:0.####} A over {this.years.Bare:0.###} a");
}
