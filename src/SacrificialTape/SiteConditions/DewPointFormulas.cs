using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.SiteConditions;

/// <summary>The formulas of humidity and dew point as the workings show them.</summary>
internal static class DewPointFormulas
{
    private static readonly Symbol A = new("a", "constant a of the set", TradeUnit.One);
    private static readonly Symbol B = new("b", "constant b of the set", TradeUnit.DegreeCelsius);
    private static readonly Symbol Air = new("T", "temperature of the air", TradeUnit.DegreeCelsius);

    internal static Basis WmoSet { get; } = Basis.From(References.SaturationWmo, "the range -45 to 60 degC is recalled, check before use");

    internal static Basis AlduchovSet { get; } = Basis.From(References.SaturationAlduchov, "the range -40 to 50 degC is recalled, check before use");

    internal static Basis BuckSet { get; } = Basis.From(References.SaturationBuck);

    internal static Basis BoltonSet { get; } = Basis.From(References.SaturationBolton, "the range -30 to 35 degC is recalled, check before use");

    internal static Basis TetensSet { get; } = Basis.From(References.SaturationTetens, "no range was found; -30 to 60 degC is judgement");

    internal static Basis WmoIceSet { get; } = Basis.From(References.SaturationWmoIce);

    internal static Basis PsychrometerTypes { get; } = Basis.From(References.PsychrometerCoefficients);

    internal static Formula Saturation { get; } = new(
        "site.saturation-pressure",
        new Symbol("e_s", "Saturation pressure", TradeUnit.Hectopascal),
        "e0 * exp(a * T / (b + T))",
        @"e_0 \exp\frac{a\,T}{b+T}",
        Basis.From(References.SaturationWmo, "the form is common to all sets"),
        [new Symbol("e0", "saturation pressure at 0 degC", TradeUnit.Hectopascal), A, B, Air]);

    internal static Formula VapourPressure { get; } = new(
        "site.vapour-pressure",
        new Symbol("e", "Vapour pressure", TradeUnit.Hectopascal),
        "U / 100 * e_s",
        @"\frac{U}{100}\,e_s",
        Basis.FirstPrinciples("what relative humidity means"),
        [new Symbol("U", "relative humidity in %", TradeUnit.One), new Symbol("e_s", "saturation pressure", TradeUnit.Hectopascal)]);

    internal static Formula Gamma { get; } = new(
        "site.gamma",
        new Symbol("g", "Logarithm of vapour pressure over e0", TradeUnit.One),
        "ln(U / 100) + a * T / (b + T)",
        @"\ln\frac{U}{100} + \frac{a\,T}{b+T}",
        Basis.FirstPrinciples("the saturation pressure turned round"),
        [new Symbol("U", "relative humidity in %", TradeUnit.One), A, B, Air]);

    internal static Formula DewPoint { get; } = new(
        "site.dew-point",
        new Symbol("T_d", "Dew point", TradeUnit.DegreeCelsius),
        "b * g / (a - g)",
        @"\frac{b\,g}{a-g}",
        Basis.FirstPrinciples("the saturation pressure turned round"),
        [B, new Symbol("g", "logarithm of vapour pressure over e0", TradeUnit.One), A]);

    internal static Formula HumidityFromDewPoint { get; } = new(
        "site.humidity-from-dew-point",
        new Symbol("U", "Relative humidity in %", TradeUnit.One),
        "100 * exp(a * T_d / (b + T_d) - a * T / (b + T))",
        @"100 \exp\left(\frac{a\,T_d}{b+T_d} - \frac{a\,T}{b+T}\right)",
        Basis.FirstPrinciples("the saturation pressure at the dew point over that at the air"),
        [A, B, new Symbol("T_d", "dew point", TradeUnit.DegreeCelsius), Air]);

    internal static Formula Psychrometric { get; } = new(
        "site.psychrometric",
        new Symbol("e", "Vapour pressure", TradeUnit.Hectopascal),
        "e_w - A * p * (T - T_w)",
        @"e_w - A\,p\,(T-T_w)",
        Basis.From(References.PsychrometricEquation),
        [
            new Symbol("e_w", "saturation pressure at the wet bulb", TradeUnit.Hectopascal),
            new Symbol("A", "psychrometer coefficient", TradeUnit.PerKelvin),
            new Symbol("p", "air pressure", TradeUnit.Hectopascal),
            Air,
            new Symbol("T_w", "wet bulb", TradeUnit.DegreeCelsius),
        ]);

    internal static Formula HumidityFromPressures { get; } = new(
        "site.humidity-from-pressures",
        new Symbol("U", "Relative humidity in %", TradeUnit.One),
        "100 * e / e_s",
        @"100\,\frac{e}{e_s}",
        Basis.FirstPrinciples("what relative humidity means"),
        [new Symbol("e", "vapour pressure", TradeUnit.Hectopascal), new Symbol("e_s", "saturation pressure", TradeUnit.Hectopascal)]);

    internal static Formula Margin { get; } = new(
        "site.dew-point-margin",
        new Symbol("m", "Margin of the surface over the dew point", TradeUnit.Kelvin),
        "T_s - T_d",
        "T_s - T_d",
        Basis.FirstPrinciples("a difference"),
        [new Symbol("T_s", "temperature of the surface", TradeUnit.DegreeCelsius), new Symbol("T_d", "dew point", TradeUnit.DegreeCelsius)]);

    internal static Formula LeastSurface { get; } = new(
        "site.least-surface",
        new Symbol("T_min", "Lowest surface for a margin", TradeUnit.DegreeCelsius),
        "T_d + m_least",
        @"T_d + m_\mathrm{least}",
        Basis.FirstPrinciples("a sum"),
        [new Symbol("T_d", "dew point", TradeUnit.DegreeCelsius), new Symbol("m_least", "margin wanted", TradeUnit.Kelvin)]);
}
