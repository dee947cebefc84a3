using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>The formulas of greatest losses as the workings show them.</summary>
internal static class ExtremeFormulas
{
    private static readonly Basis Moments = Basis.From(References.GumbelMoments);
    private static readonly Basis Likelihood = Basis.From(References.GumbelLikelihood);
    private static readonly Basis Areas = Basis.From(References.ExtremesOfCorrosion);

    private static readonly Symbol Location = new("l", "location", TradeUnit.Micrometer);
    private static readonly Symbol Scale = new("a", "scale", TradeUnit.Micrometer);
    private static readonly Symbol LocationFound = new("l", "Location", TradeUnit.Micrometer);
    private static readonly Symbol ScaleFound = new("a", "Scale", TradeUnit.Micrometer);
    private static readonly Symbol Period = new("T", "return period", TradeUnit.One);
    private static readonly Symbol Mean = new("x", "mean of the greatest losses", TradeUnit.Micrometer);

    internal static Formula ScaleByMoments { get; } = new(
        "extreme.scale-by-moments", ScaleFound, "s * sqrt(6) / pi", @"\frac{s\sqrt{6}}{\pi}", Moments,
        [new Symbol("s", "standard deviation of the greatest losses", TradeUnit.Micrometer)]);

    internal static Formula LocationByMoments { get; } = new(
        "extreme.location-by-moments", LocationFound, "x - g * a", @"\bar{x} - \gamma_E\,a", Moments,
        [Mean, new Symbol("g", "Euler's constant", TradeUnit.One), Scale]);

    internal static Formula ScaleByLikelihood { get; } = new(
        "extreme.scale-by-likelihood", ScaleFound, "x - y", @"\bar{x} - \frac{\sum x_i e^{-x_i/a}}{\sum e^{-x_i/a}}", Likelihood,
        [Mean, new Symbol("y", "mean weighted by exp(-x/a), found by bracketing", TradeUnit.Micrometer)]);

    internal static Formula LocationByLikelihood { get; } = new(
        "extreme.location-by-likelihood", LocationFound, "m - a * ln(w)", @"-a\,\ln\left(\frac{1}{n}\sum e^{-x_i/a}\right)", Likelihood,
        [
            new Symbol("m", "least of the greatest losses", TradeUnit.Micrometer), Scale,
            new Symbol("w", "mean of exp(-(x - m)/a)", TradeUnit.One),
        ]);

    internal static Formula ReturnPeriod { get; } = new(
        "extreme.return-period", new Symbol("T", "Return period", TradeUnit.One), "A / A_s", @"\frac{A}{A_s}", Areas,
        [new Symbol("A", "whole area", TradeUnit.SquareMeter), new Symbol("A_s", "sample area", TradeUnit.SquareMeter)]);

    internal static Formula Greatest { get; } = new(
        "extreme.greatest",
        new Symbol("x_T", "Greatest loss to expect", TradeUnit.Micrometer),
        "l - a * ln(0 - ln(1 - 1 / T))",
        @"l - a\,\ln\left[-\ln\left(1 - \frac{1}{T}\right)\right]",
        Areas,
        [Location, Scale, Period]);

    internal static Formula GreatestByLogarithm { get; } = new(
        "extreme.greatest-by-logarithm",
        new Symbol("x_ln", "The same by the shortcut", TradeUnit.Micrometer),
        "l + a * ln(T)",
        @"l + a\,\ln T",
        Areas,
        [Location, Scale, Period]);

    internal static Formula NotExceeded { get; } = new(
        "extreme.not-exceeded",
        new Symbol("x_P", "Loss that the whole area does not exceed with that probability", TradeUnit.Micrometer),
        "l + a * (ln(T) - ln(0 - ln(P)))",
        @"l + a\left[\ln T - \ln(-\ln P)\right]",
        Basis.FirstPrinciples("the greatest of T areas stays below x when each does: F to the power T"),
        [Location, Scale, Period, new Symbol("P", "probability", TradeUnit.One)]);
}
