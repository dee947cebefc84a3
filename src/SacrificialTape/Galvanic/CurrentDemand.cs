using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>The current that bare steel draws from zinc, averaged over time, as a range per area of bare steel.</summary>
/// <remarks>
/// <para>Lowest: zero or more, at most the highest. In the open air the surface is wet only part of the time: an average
/// belongs here, never the limit of a wet film (<see cref="OxygenLimit"/> is for the reach and does not fit in).</para>
/// <para>No standard gives a design demand for the atmosphere; <see cref="FromSteelCorrosion(CorrosivityCategory)"/> takes the free corrosion
/// of the steel as its equivalent, by judgement.</para>
/// </remarks>
public sealed record CurrentDemand
{
    private readonly StoredNumber lowest;
    private readonly StoredNumber highest;

    private CurrentDemand(string name, double lowestAmperesPerM2, double highestAmperesPerM2, Basis basis)
    {
        this.Name = name;
        this.lowest = new StoredNumber(lowestAmperesPerM2);
        this.highest = new StoredNumber(highestAmperesPerM2);
        this.Basis = basis;
    }

    /// <summary>A short name for tables.</summary>
    public string Name { get; }

    /// <summary>The lowest demand.</summary>
    public ElectricCurrentDensity Lowest => ElectricCurrentDensity.FromAmperesPerSquareMeter(this.lowest.Bare);

    /// <summary>The highest demand.</summary>
    public ElectricCurrentDensity Highest => ElectricCurrentDensity.FromAmperesPerSquareMeter(this.highest.Bare);

    /// <summary>How it is known.</summary>
    public Basis Basis { get; }

    internal double LowestAmperesPerM2 => this.lowest.Bare;

    internal double HighestAmperesPerM2 => this.highest.Bare;

    /// <summary>Bare steel in soil, water or concrete, from a published table in mA/ft2.</summary>
    /// <param name="medium">What it lies in.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a medium of the table.</exception>
    public static CurrentDemand Of(DemandMedium medium)
    {
        (string name, double low, double high) = DemandTable.MilliamperesPerSquareFoot(medium);
        const double ToAmperesPerM2 = 0.001 / UnitConversions.SquareMetersPerSquareFoot;
        return new(name, low * ToAmperesPerM2, high * ToAmperesPerM2, DemandTable.Basis);
    }

    /// <summary>Bare steel in the open air: its free corrosion of the first year, as a current.</summary>
    /// <param name="category">Corrosivity category of the site for steel.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category.</exception>
    public static CurrentDemand FromSteelCorrosion(CorrosivityCategory category)
    {
        RateRange rates = Corrosivity.RatesOf(category, Metal.CarbonSteel);
        return new(
            $"open air, {category}",
            CurrentOf(rates.Lowest),
            CurrentOf(rates.Highest),
            Basis.Judgement($"the free corrosion of bare steel as a current, time-averaged; rates: {Corrosivity.BasisOf(category)}; calibrate with coupons"));
    }

    /// <summary>Bare steel whose free corrosion was measured.</summary>
    /// <param name="rate">The rate.</param>
    /// <param name="note">What was measured, where and when.</param>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static CurrentDemand FromSteelCorrosion(CorrosionRate rate, string note) =>
        new("from steel coupons", CurrentOf(rate), CurrentOf(rate), Basis.OwnExperience(note));

    /// <summary>A demand that was measured.</summary>
    /// <param name="lowest">The lowest found, averaged over time, at least 0.</param>
    /// <param name="highest">The highest found, at least the lowest.</param>
    /// <param name="note">What was measured, where and when.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static CurrentDemand FromMeasurement(ElectricCurrentDensity lowest, ElectricCurrentDensity highest, string note)
    {
        double low = AcceptedRange.AtLeast(0, "A/m2").Check(UnitConversions.AmperesPerSquareMeter(lowest), nameof(lowest));
        double high = AcceptedRange.AtLeast(low, "A/m2").Noting("the lowest").Check(UnitConversions.AmperesPerSquareMeter(highest), nameof(highest));
        return new("measured", low, high, Basis.OwnExperience(note));
    }

    /// <summary>The range as invariant text, in mA/m2.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"{this.Name}, {this.lowest.Bare * 1000:G4} to {this.highest.Bare * 1000:G4} mA/m2");

    private static double CurrentOf(CorrosionRate rate) =>
        UnitConversions.AmperesPerSquareMeter(FaradayLaw.CurrentOf(rate, Metal.CarbonSteel));
}
