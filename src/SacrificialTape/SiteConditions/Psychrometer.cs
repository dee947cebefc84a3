using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.SiteConditions;

/// <summary>A pair of thermometers, one in a wet sleeve, by how it is ventilated.</summary>
/// <remarks>Coefficient: 0.0005 to 0.0015 1/K. An unventilated one in still air can be far off: swing or fan it.</remarks>
public sealed record Psychrometer
{
    private readonly StoredNumber perKelvin;

    /// <summary>Describes a psychrometer of a coefficient of its own.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="coefficient">Its coefficient, in <see cref="TradeUnit.PerKelvin"/>.</param>
    /// <param name="basis">On what the coefficient rests.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is outside its range.</exception>
    public Psychrometer(string name, Measure coefficient, Basis basis)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(basis);
        this.Name = name;
        this.Basis = basis;
        this.perKelvin = new StoredNumber(AcceptedRange.Between(0.0005, 0.0015, "1/K").Check(coefficient.In(TradeUnit.PerKelvin), nameof(coefficient)));
    }

    /// <summary>Air drawn past the bulbs at some 5 m/s: 0.000662 1/K.</summary>
    public static Psychrometer Aspirated { get; } = new("aspirated", new Measure(0.000662, TradeUnit.PerKelvin), DewPointFormulas.PsychrometerTypes);

    /// <summary>In natural wind of some 1 m/s: 0.0008 1/K.</summary>
    public static Psychrometer NaturallyVentilated { get; } = new("naturally ventilated", new Measure(0.0008, TradeUnit.PerKelvin), DewPointFormulas.PsychrometerTypes);

    /// <summary>Indoors, not ventilated: 0.0012 1/K.</summary>
    public static Psychrometer Unventilated { get; } = new("not ventilated", new Measure(0.0012, TradeUnit.PerKelvin), DewPointFormulas.PsychrometerTypes);

    /// <summary>What it is.</summary>
    public string Name { get; }

    /// <summary>Its coefficient.</summary>
    public Measure Coefficient => new(this.PerKelvin, TradeUnit.PerKelvin);

    /// <summary>On what the coefficient rests.</summary>
    public Basis Basis { get; }

    internal double PerKelvin => this.perKelvin.Bare;

    /// <summary>Name and coefficient.</summary>
    public override string ToString() => $"{this.Name}, {this.Coefficient}";
}
