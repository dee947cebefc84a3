using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Exposure;

/// <summary>The formulas of first-year rates as the workings show them.</summary>
internal static class ExposureFormulas
{
    private static readonly Basis Zinc = Basis.From(References.DoseResponseZinc);
    private static readonly Basis Steel = Basis.From(References.DoseResponseSteel);
    private static readonly Basis Error = Basis.From(References.RateErrorModel);
    private static readonly Basis Coupon = Basis.From(References.CouponMassLoss);
    private static readonly Basis Quadrature = Basis.FirstPrinciples(
        "independent standard uncertainties of weighing and area add as squares; density and time are taken as exact");

    private static readonly Symbol Warmth = new("T", "annual mean temperature", TradeUnit.DegreeCelsius);
    private static readonly Symbol Humidity = new("RH", "annual mean relative humidity", TradeUnit.Percent);
    private static readonly Symbol Sulfur = new("P_d", "deposition of sulfur dioxide", TradeUnit.MilligramPerSquareMeterDay);
    private static readonly Symbol Chloride = new("S_d", "deposition of chloride", TradeUnit.MilligramPerSquareMeterDay);
    private static readonly Symbol WarmthTerm = new("f", "Temperature term", TradeUnit.One);
    private static readonly Symbol SulfurTerm = new("r_S", "Rate by sulfur dioxide", TradeUnit.MicrometerPerYear);
    private static readonly Symbol ChlorideTerm = new("r_Cl", "Rate by chloride", TradeUnit.MicrometerPerYear);
    private static readonly Symbol Rate = new("r", "First-year rate", TradeUnit.MicrometerPerYear);
    private static readonly Symbol Spread = new("s", "s of the log-normal error", TradeUnit.One);
    private static readonly Symbol Mass = new("W", "mass lost", TradeUnit.Gram);
    private static readonly Symbol Area = new("A", "area exposed", TradeUnit.SquareCentimeter);
    private static readonly Symbol Hours = new("T", "time exposed", TradeUnit.Hour);
    private static readonly Symbol Density = new("D", "density", TradeUnit.GramPerCubicCentimeter);
    private static readonly Symbol Uncertainty = new("u", "Standard uncertainty of the rate", TradeUnit.MicrometerPerYear);

    internal static Basis EstimatedSpread { get; } = Basis.From(References.EstimationUncertainty);

    internal static Formula ZincWarmth { get; } = Temperature("dose.zinc-temperature", "0.038", "0.071", Zinc);

    internal static Formula SteelWarmth { get; } = Temperature("dose.steel-temperature", "0.150", "0.054", Steel);

    internal static Formula ZincSulfur { get; } = new(
        "dose.zinc-sulfur",
        SulfurTerm,
        "0.0129 * pow(P_d, 0.44) * exp(0.046 * RH + f)",
        @"0.0129\,P_d^{0.44}\,e^{0.046\,RH + f}",
        Zinc,
        [Sulfur, Humidity, WarmthTerm]);

    internal static Formula ZincChloride { get; } = new(
        "dose.zinc-chloride",
        ChlorideTerm,
        "0.0175 * pow(S_d, 0.57) * exp(0.008 * RH + 0.085 * T)",
        @"0.0175\,S_d^{0.57}\,e^{0.008\,RH + 0.085\,T}",
        Zinc,
        [Chloride, Humidity, Warmth]);

    internal static Formula SteelSulfur { get; } = new(
        "dose.steel-sulfur",
        SulfurTerm,
        "1.77 * pow(P_d, 0.52) * exp(0.020 * RH + f)",
        @"1.77\,P_d^{0.52}\,e^{0.020\,RH + f}",
        Steel,
        [Sulfur, Humidity, WarmthTerm]);

    internal static Formula SteelChloride { get; } = new(
        "dose.steel-chloride",
        ChlorideTerm,
        "0.102 * pow(S_d, 0.62) * exp(0.033 * RH + 0.040 * T)",
        @"0.102\,S_d^{0.62}\,e^{0.033\,RH + 0.040\,T}",
        Steel,
        [Chloride, Humidity, Warmth]);

    internal static Formula ZincRate { get; } = Sum("dose.zinc", Zinc);

    internal static Formula SteelRate { get; } = Sum("dose.steel", Steel);

    internal static Formula LowRate { get; } = new(
        "rate.log-normal-low",
        new Symbol("r_low", "Low end of the rate", TradeUnit.MicrometerPerYear),
        "r * exp(-s)",
        @"r\,e^{-s}",
        Error,
        [Rate, Spread]);

    internal static Formula HighRate { get; } = new(
        "rate.log-normal-high",
        new Symbol("r_high", "High end of the rate", TradeUnit.MicrometerPerYear),
        "r * exp(s)",
        @"r\,e^{s}",
        Error,
        [Rate, Spread]);

    internal static Formula SulfurDeposition { get; } = new(
        "dose.sulfur-deposition",
        new Symbol("P_d", "Deposition of sulfur dioxide", TradeUnit.MilligramPerSquareMeterDay),
        "0.8 * P_c",
        @"0.8\,P_c",
        Basis.From(References.SulfurDioxideConversion),
        [new Symbol("P_c", "concentration of sulfur dioxide", TradeUnit.MicrogramPerCubicMeter)]);

    internal static Formula CouponRate { get; } = new(
        "coupon.rate", Rate, "87600000 * W / (A * T * D)", @"\frac{8.76\cdot10^{7}\,W}{A\,T\,D}", Coupon, [Mass, Area, Hours, Density]);

    internal static Formula CouponMass { get; } = new(
        "coupon.mass",
        new Symbol("m", "Mass lost per area and year", TradeUnit.GramPerSquareMeterYear),
        "87600000 * W / (A * T)",
        @"\frac{8.76\cdot10^{7}\,W}{A\,T}",
        Coupon,
        [Mass, Area, Hours]);

    internal static Formula CouponUncertainty { get; } = new(
        "coupon.uncertainty",
        Uncertainty,
        "87600000 * sqrt(pow(u_W, 2) + pow(W * u_A / A, 2)) / (A * T * D)",
        @"\frac{8.76\cdot10^{7}}{A\,T\,D}\sqrt{u_W^2 + \left(W\,\frac{u_A}{A}\right)^2}",
        Quadrature,
        [
            new Symbol("u_W", "standard uncertainty of the mass lost", TradeUnit.Gram), Mass,
            new Symbol("u_A", "standard uncertainty of the area", TradeUnit.SquareCentimeter), Area, Hours, Density,
        ]);

    internal static Formula CouponLow { get; } = new(
        "coupon.low",
        new Symbol("r_low", "Low end of the rate", TradeUnit.MicrometerPerYear),
        "max(0, r - 2 * u)",
        @"\max(0,\,r - 2u)",
        Quadrature,
        [Rate, Uncertainty]);

    internal static Formula CouponHigh { get; } = new(
        "coupon.high",
        new Symbol("r_high", "High end of the rate", TradeUnit.MicrometerPerYear),
        "r + 2 * u",
        "r + 2u",
        Quadrature,
        [Rate, Uncertainty]);

    // The smaller of the two is the rising branch below 10 degC and the falling one above; both are zero there.
    private static Formula Temperature(string id, string below, string above, Basis basis) => new(
        id,
        WarmthTerm,
        $"min({below} * (T - 10), -{above} * (T - 10))",
        $@"\min\left({below}\,(T-10),\;-{above}\,(T-10)\right)",
        basis,
        [Warmth]);

    private static Formula Sum(string id, Basis basis) =>
        new(id, Rate, "r_S + r_Cl", @"r_\mathrm{S} + r_\mathrm{Cl}", basis, [SulfurTerm, ChlorideTerm]);
}
