using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The formulas of lives with their uncertainty as the workings show them.</summary>
internal static class SpreadFormulas
{
    private static readonly Basis Error = Basis.From(References.RateErrorModel, "s read as one standard deviation of ln r, which is a judgement");

    private static readonly Basis Bounds = Basis.Judgement("two bounds read as quantiles as far out on both sides; a category says only that the rate lies between them");

    private static readonly Symbol Median = new("m", "median rate", TradeUnit.MicrometerPerYear);
    private static readonly Symbol Sigma = new("s", "s of the log-normal rate", TradeUnit.One);
    private static readonly Symbol Normal = new("z", "quantile of the normal distribution", TradeUnit.One);
    private static readonly Symbol Lowest = new("r_1", "lower bound", TradeUnit.MicrometerPerYear);
    private static readonly Symbol Highest = new("r_2", "upper bound", TradeUnit.MicrometerPerYear);

    /// <summary>The normal distribution function and its inverse.</summary>
    internal static Basis NormalDistribution { get; } = Basis.From(References.NormalDistribution);

    /// <summary>P(life of n layers >= T) is the mean of N((ln(u f) - ln g(T/n) - ln m)/s) over u, f and the exponent.</summary>
    internal static Basis Reached { get; } = Basis.FirstPrinciples(
        "a life of n layers is at least T where r g(T/n) is at most u f; the rate is integrated in closed form, foil, usable share and exponent by quadrature true to some 1e-10");

    internal static Basis Inverse { get; } = Basis.FirstPrinciples("the bracketed root of the probability of reaching a life");

    /// <summary>Shares of the zinc of all layers.</summary>
    internal static Basis PartOfLayers { get; } = Basis.FirstPrinciples(
        "k whole layers and a part x of the next take k G(u f/r) + G(x u f/r), G the time to a loss; each layer begins anew");

    internal static Basis Local { get; } = Basis.From(References.HotDipThickness);

    internal static Formula MedianFromBounds { get; } = new(
        "rate.median-from-bounds",
        new Symbol("m", "Median rate", TradeUnit.MicrometerPerYear),
        "sqrt(r_1 * r_2)",
        @"\sqrt{r_1 r_2}",
        Bounds,
        [Lowest, Highest]);

    internal static Formula SpreadFromBounds { get; } = new(
        "rate.spread-from-bounds",
        new Symbol("s", "s of the log-normal rate", TradeUnit.One),
        "ln(r_2 / r_1) / (2 * z)",
        @"\frac{\ln(r_2/r_1)}{2z}",
        Bounds,
        [Highest, Lowest, Normal]);

    internal static Formula StandardError { get; } = new(
        "exponent.standard-error",
        new Symbol("s_b", "Standard error of the exponent", TradeUnit.One),
        "(B_2 - B_1) / 2",
        @"\frac{B_2 - B_1}{2}",
        LossFormulas.Power,
        [new Symbol("B_2", "upper exponent", TradeUnit.One), new Symbol("B_1", "mean exponent", TradeUnit.One)]);

    internal static Formula RateAt { get; } = new(
        "rate.at-confidence",
        new Symbol("r", "Rate that is not exceeded with that confidence", TradeUnit.MicrometerPerYear),
        "m * exp(z * s)",
        @"m\,e^{z s}",
        Error,
        [Median, Normal, Sigma]);

    internal static Formula Rest { get; } = new(
        "life.rest-of-spread",
        new Symbol("t_c", "Life that is reached with that confidence", TradeUnit.Year),
        "k * t_all",
        @"k\,t_\text{all}",
        Reached,
        [
            new Symbol("k", "what the spread of foil, usable share and exponent makes of it, by quadrature", TradeUnit.One),
            new Symbol("t_all", "life with those in their middle", TradeUnit.Year),
        ]);

    internal static Formula LogNormalSpread { get; } = new(
        "life.log-normal-spread",
        new Symbol("s_t", "s of the log-normal life", TradeUnit.One),
        "s / b",
        @"\frac{s}{b}",
        Basis.FirstPrinciples("ln t = (ln(u f) - ln r)/b: the life is log-normal when the rate is; b is 1 under the linear law"),
        [Sigma, new Symbol("b", "time exponent", TradeUnit.One)]);

    internal static Formula LeastLayers { get; } = new(
        "design.layers",
        new Symbol("n", "Layers needed", TradeUnit.One),
        "ceil(T / t_1)",
        @"\left\lceil \frac{T}{t_1} \right\rceil",
        Basis.FirstPrinciples("all layers see one rate, so each lasts as long as the first"),
        [new Symbol("T", "required life", TradeUnit.Year), new Symbol("t_1", "life of one layer with that confidence", TradeUnit.Year)]);

    internal static Formula HotDipThickness { get; } = new(
        "hot-dip.thickness",
        new Symbol("f_h", "Thickness of hot-dip zinc", TradeUnit.Micrometer),
        "1000 * w / rho",
        @"\frac{1000\,w}{\rho}",
        Basis.FirstPrinciples("mass per area over density"),
        [new Symbol("w", "mass per area of one face", TradeUnit.GramPerSquareMeter), new Symbol("rho", "density", TradeUnit.KilogramPerCubicMeter)]);
}
