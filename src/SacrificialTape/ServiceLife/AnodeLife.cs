using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>The life of an anode that gives a current, in either of the classical forms.</summary>
/// <remarks>Mass and current: more than 0. The current is the mean over the life.</remarks>
public sealed record AnodeLife : IHasWorkings
{
    private readonly StoredNumber kilograms;
    private readonly StoredNumber amperes;
    private readonly StoredNumber usable;
    private readonly StoredNumber capacity;
    private readonly StoredNumber consumption;
    private readonly StoredNumber efficiency;

    /// <summary>By practical capacity: t = W u Q/(8760 I).</summary>
    /// <param name="mass">Mass of the anode.</param>
    /// <param name="capacity">The practical capacity.</param>
    /// <param name="usable">Utilisation.</param>
    /// <param name="mean">Current on the mean.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public AnodeLife(Mass mass, PracticalCapacity capacity, Utilisation usable, ElectricCurrent mean)
        : this(mass, usable, mean)
    {
        ArgumentNullException.ThrowIfNull(capacity);
        this.capacity = new StoredNumber(capacity.AmpereHoursPerKilogram);
    }

    private AnodeLife(Mass mass, AnodeConsumption theoretical, CurrentEfficiency efficiency, Utilisation usable, ElectricCurrent mean)
        : this(mass, usable, mean)
    {
        this.consumption = new StoredNumber(theoretical.KilogramsPerAmpereYear);
        this.efficiency = new StoredNumber(efficiency.Fraction);
    }

    private AnodeLife(Mass mass, Utilisation usable, ElectricCurrent mean)
    {
        this.kilograms = new StoredNumber(AcceptedRange.Above(0, "kg").Check(UnitConversions.Kilograms(mass), nameof(mass)));
        this.amperes = new StoredNumber(AcceptedRange.Above(0, "A").Check(UnitConversions.Amperes(mean), nameof(mean)));
        this.usable = new StoredNumber(usable.Fraction);
    }

    /// <summary>The life.</summary>
    [BasisOf(typeof(HolidayFormulas), nameof(HolidayFormulas.AnodeLife))]
    [BasisOf(typeof(HolidayFormulas), nameof(HolidayFormulas.AnodeLifeByConsumption))]
    public Lifetime Life => Lifetime.OfYears(this.Solve(default(NoSteps)));

    /// <summary>By consumption: t = W eta u/(S I), for anodes of any metal.</summary>
    /// <param name="mass">Mass of the anode.</param>
    /// <param name="theoretical">Consumption at full efficiency.</param>
    /// <param name="efficiency">Efficiency; 1 where the consumption already contains it.</param>
    /// <param name="usable">Utilisation; 1 where the form has none.</param>
    /// <param name="mean">Current on the mean.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static AnodeLife ByConsumption(
        Mass mass, AnodeConsumption theoretical, CurrentEfficiency efficiency, Utilisation usable, ElectricCurrent mean) =>
        new(mass, theoretical, efficiency, usable, mean);

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.Solve(steps);
        return steps.Under("Life of an anode");
    }

    private double Solve<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => this.capacity.IsSet
            ? HolidayKernel.Life(this.kilograms.Bare, this.usable.Bare, this.capacity.Bare, this.amperes.Bare, steps)
            : HolidayKernel.LifeByConsumption(
                this.kilograms.Bare, this.efficiency.Bare, this.usable.Bare, this.consumption.Bare, this.amperes.Bare, steps);
}
