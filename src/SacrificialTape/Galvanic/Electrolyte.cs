using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>A water whose conductivity is known as a range.</summary>
public sealed record Electrolyte
{
    private readonly StoredNumber lowest;
    private readonly StoredNumber highest;

    private Electrolyte(string name, double lowest, double highest, Basis basis)
    {
        this.Name = name;
        this.lowest = new StoredNumber(lowest);
        this.highest = new StoredNumber(highest);
        this.Basis = basis;
    }

    /// <summary>Rain: 0.0005 to 0.015 S/m (recalled, check before use).</summary>
    public static Electrolyte Rain { get; } = new("rain", 0.0005, 0.015, Basis.From(References.RainConductivity));

    /// <summary>Drinking water: 0.02 to 0.08 S/m (read; a teaching page says 0.005 to 0.05).</summary>
    public static Electrolyte DrinkingWater { get; } = new("drinking water", 0.02, 0.08, Basis.From(References.WaterConductivity));

    /// <summary>Seawater: 4.8 to 5 S/m (read).</summary>
    public static Electrolyte Seawater { get; } = new("seawater", 4.8, 5, Basis.From(References.WaterConductivity));

    /// <summary>A short name for tables.</summary>
    public string Name { get; }

    /// <summary>The lowest conductivity.</summary>
    public ElectricConductivity Lowest => ElectricConductivity.FromSiemensPerMeter(this.lowest.Bare);

    /// <summary>The highest conductivity.</summary>
    public ElectricConductivity Highest => ElectricConductivity.FromSiemensPerMeter(this.highest.Bare);

    /// <summary>How it is known.</summary>
    public Basis Basis { get; }

    /// <summary>Name and conductivity in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Name}, {this.lowest.Bare:0.######} to {this.highest.Bare:0.######} S/m");
}
