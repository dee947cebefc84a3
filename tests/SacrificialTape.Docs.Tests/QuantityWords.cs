using SacrificialTape.Quantities;

namespace SacrificialTape.Docs.Tests;

/// <summary>What each unit that text may bear measures, in words.</summary>
internal static class QuantityWords
{
    private static readonly (TradeUnit Unit, string What)[] Kinds =
    [
        (TradeUnit.One, "number, share"),
        (TradeUnit.Millimeter, "length"),
        (TradeUnit.SquareMeter, "area"),
        (TradeUnit.Degree, "angle"),
        (TradeUnit.DegreeCelsius, "temperature"),
        (TradeUnit.Kelvin, "difference of temperatures"),
        (TradeUnit.PerKelvin, "change per kelvin"),
        (TradeUnit.Year, "time; a year is 365 d"),
        (TradeUnit.Kilogram, "mass"),
        (TradeUnit.Milliliter, "volume"),
        (TradeUnit.KilogramPerCubicMeter, "density"),
        (TradeUnit.GramPerSquareMeter, "mass on an area"),
        (TradeUnit.MicrometerPerYear, "rate of loss by thickness"),
        (TradeUnit.GramPerSquareMeterYear, "rate of loss by mass"),
        (TradeUnit.MilligramPerSquareMeterDay, "deposition from the air"),
        (TradeUnit.MicrogramPerCubicMeter, "concentration in air"),
        (TradeUnit.SquareCentimeterPerSquareMeter, "bare steel for covered steel"),
        (TradeUnit.OhmSquareCentimeter, "contact resistivity"),
        (TradeUnit.Ohm, "resistance"),
        (TradeUnit.OhmMeter, "resistivity"),
        (TradeUnit.SiemensPerMeter, "conductivity"),
        (TradeUnit.Volt, "voltage, potential"),
        (TradeUnit.Ampere, "current"),
        (TradeUnit.AmperePerSquareMeter, "current density"),
        (TradeUnit.MilliamperePerMeter, "current for an edge"),
        (TradeUnit.AmpereHourPerKilogram, "electrochemical capacity"),
        (TradeUnit.KilogramPerAmpereYear, "consumption of an anode"),
        (TradeUnit.GramPerMole, "molar mass"),
        (TradeUnit.CoulombPerMole, "charge of a mole"),
        (TradeUnit.MolePerCubicMeter, "amount in a volume"),
        (TradeUnit.SquareMeterPerSecond, "diffusivity"),
        (TradeUnit.Megapascal, "strength, pressure"),
        (TradeUnit.VickersHardness, "hardness"),
        (TradeUnit.NewtonPerMillimeter, "peel"),
        (TradeUnit.MeterPerSecond, "speed"),
    ];

    /// <summary>Every unit with its symbol and what it measures, those of one kind together.</summary>
    internal static IEnumerable<(string What, string Symbol, TradeUnit Unit)> All =>
        Kinds.SelectMany(static kind => Enum.GetValues<TradeUnit>().Where(unit => Alike(unit, kind.Unit)).Select(unit => (kind.What, Symbol(unit), unit)));

    /// <summary>What a fault says to be needed, by the first of the units that it lists.</summary>
    internal static string Of(string unitsThatDo)
    {
        string first = unitsThatDo.Split(", ")[0];
        string what = All.First(one => one.Symbol == (first.StartsWith("none", StringComparison.Ordinal) ? string.Empty : first)).What;
        return what.Split(["; ", ", "], StringSplitOptions.None)[0];
    }

    // Nothing of one kind is nothing of it in any unit, and of another kind something else.
    private static bool Alike(TradeUnit one, TradeUnit other) => new Measure(0, one) == new Measure(0, other);

    private static string Symbol(TradeUnit unit) => new Measure(1, unit).ToString()[1..].TrimStart();
}
