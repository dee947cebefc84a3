using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The formulas of zinc beside bare steel, and of anode mass and life, as the workings show them.</summary>
internal static class HolidayFormulas
{
    private static readonly Basis Mass = Basis.From(References.FlushAnodeResistance);
    private static readonly Basis Military = Basis.From(References.MilitaryAnodeMass);

    private static readonly Symbol Demand = new("g", "recession by the demand of bare steel", TradeUnit.MicrometerPerYear);
    private static readonly Symbol Zinc = new("s_all", "zinc to lose", TradeUnit.Micrometer);
    private static readonly Symbol Current = new("I", "current on the mean", TradeUnit.Ampere);
    private static readonly Symbol Years = new("t", "life", TradeUnit.Year);
    private static readonly Symbol Usable = new("u", "utilisation", TradeUnit.One);
    private static readonly Symbol Capacity = new("Q", "practical capacity", TradeUnit.AmpereHourPerKilogram);
    private static readonly Symbol Consumption = new("S", "theoretical consumption", TradeUnit.KilogramPerAmpereYear);
    private static readonly Symbol Efficiency = new("eta", "current efficiency", TradeUnit.One);
    private static readonly Symbol Kilograms = new("W", "mass of the anode", TradeUnit.Kilogram);

    internal static Formula DemandRate { get; } = new(
        "holiday.demand-rate",
        new Symbol("g", "Recession of the zinc by the demand of bare steel", TradeUnit.MicrometerPerYear),
        "q * i * 8760 * 1000000 / (Q * rho)",
        @"\frac{8.76\cdot 10^{9}\,q\,i}{Q\,\rho}",
        Basis.FirstPrinciples("charge over capacity; a year of 8760 h"),
        [
            new Symbol("q", "bare steel for each area of zinc", TradeUnit.One),
            new Symbol("i", "demand of bare steel", TradeUnit.AmperePerSquareMeter),
            new Symbol("Q", "capacity", TradeUnit.AmpereHourPerKilogram),
            new Symbol("rho", "density of zinc", TradeUnit.KilogramPerCubicMeter),
        ]);

    internal static Formula ZincCounted { get; } = new(
        "holiday.zinc",
        new Symbol("s_all", "Zinc to lose", TradeUnit.Micrometer),
        "u * f",
        @"u\,f",
        Basis.FirstPrinciples("perforation ends the life: of the foil only a share counts"),
        [new Symbol("u", "usable share of the foil", TradeUnit.One), new Symbol("f", "foil thickness", TradeUnit.Micrometer)]);

    internal static Formula DemandLife { get; } = new(
        "holiday.demand-life",
        new Symbol("t_h", "Life by the demand alone", TradeUnit.Year),
        "s_all / g",
        @"\frac{s_\text{all}}{g}",
        Basis.FirstPrinciples("the demand is the same all the time"),
        [Zinc, Demand]);

    internal static Formula OwnShare { get; } = new(
        "holiday.own-share",
        new Symbol("s", "Zinc that its own corrosion takes until then", TradeUnit.Micrometer),
        "s_all - g * t_h",
        @"s_\text{all} - g\,t_h",
        Basis.FirstPrinciples("what the steel does not take; the life is the bracketed root at which own loss and this are one"),
        [Zinc, Demand, new Symbol("t_h", "life, by the root", TradeUnit.Year)]);

    internal static Formula AnodeMass { get; } = new(
        "anode.mass",
        new Symbol("W", "Mass of the anode", TradeUnit.Kilogram),
        "8760 * I * t / (u * Q)",
        @"\frac{8760\,I\,t}{u\,Q}",
        Mass,
        [Current, Years, Usable, Capacity]);

    internal static Formula AnodeLife { get; } = new(
        "anode.life",
        new Symbol("t", "Life of the anode", TradeUnit.Year),
        "W * u * Q / (8760 * I)",
        @"\frac{W\,u\,Q}{8760\,I}",
        Mass,
        [Kilograms, Usable, Capacity, Current]);

    internal static Formula AnodeMassByConsumption { get; } = new(
        "anode.mass-by-consumption",
        new Symbol("W", "Mass of the anode", TradeUnit.Kilogram),
        "t * S * I / (eta * u)",
        @"\frac{t\,S\,I}{\eta\,u}",
        Military,
        [Years, Consumption, Current, Efficiency, Usable]);

    internal static Formula AnodeLifeByConsumption { get; } = new(
        "anode.life-by-consumption",
        new Symbol("t", "Life of the anode", TradeUnit.Year),
        "W * eta * u / (S * I)",
        @"\frac{W\,\eta\,u}{S\,I}",
        Military,
        [Kilograms, Efficiency, Usable, Consumption, Current]);
}
