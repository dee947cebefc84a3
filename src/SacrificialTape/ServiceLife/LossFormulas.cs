using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The formulas of zinc loss as the workings show them.</summary>
internal static class LossFormulas
{
    internal static Basis Linear { get; } = Basis.From(References.LifeProportionalToThickness, "linear on the first-year rate");

    internal static Basis Power { get; } = Basis.From(References.PowerLawExponents);

    internal static Basis PowerForm { get; } = Basis.From(References.PowerLawForm, "with an exponent of the user's own");

    private static readonly Symbol Rate = new("r", "first-year rate", TradeUnit.MicrometerPerYear);
    private static readonly Symbol Time = new("t", "time", TradeUnit.Year);
    private static readonly Symbol Exponent = new("b", "time exponent", TradeUnit.One);
    private static readonly Symbol Zinc = new("s", "zinc to lose", TradeUnit.Micrometer);
    private static readonly Symbol Loss = new("D", "Loss of thickness", TradeUnit.Micrometer);
    private static readonly Symbol Life = new("t", "Time to lose it", TradeUnit.Year);
    private static readonly Symbol Knee = new("T", "end of the power law", TradeUnit.Year);

    internal static Formula LinearLoss { get; } = new("loss.linear", Loss, "r * t", @"r\,t", Linear, [Rate, Time]);

    internal static Formula LinearTime { get; } = new("life.linear", Life, "s / r", @"\frac{s}{r}", Linear, [Zinc, Rate]);

    internal static Formula PowerLoss { get; } = new(
        "loss.power", Loss, "r * pow(t, b)", "r\\,t^{b}", Power, [Rate, Time, Exponent]);

    internal static Formula TangentLoss { get; } = new(
        "loss.tangent",
        Loss,
        "r * (pow(T, b) + b * pow(T, b - 1) * (t - T))",
        @"r\left[T^{b} + b\,T^{b-1}(t - T)\right]",
        Power,
        [Rate, Exponent, Knee, Time]);

    internal static Formula PowerTime { get; } = new(
        "life.power", Life, "pow(s / r, 1 / b)", @"\left(\frac{s}{r}\right)^{1/b}", Power, [Zinc, Rate, Exponent]);

    internal static Formula TangentTime { get; } = new(
        "life.tangent",
        Life,
        "T + (s / r - pow(T, b)) / (b * pow(T, b - 1))",
        @"T + \frac{s/r - T^{b}}{b\,T^{b-1}}",
        Power,
        [Knee, Zinc, Rate, Exponent]);

    internal static Formula ZincPerLayer { get; } = new(
        "life.zinc-per-layer",
        new Symbol("s", "Zinc to lose in one layer", TradeUnit.Micrometer),
        "u * f",
        @"u\,f",
        Basis.FirstPrinciples("perforation ends the life: of each foil only a share counts"),
        [new Symbol("u", "usable share of the foil", TradeUnit.One), new Symbol("f", "foil thickness", TradeUnit.Micrometer)]);

    internal static Formula Layers { get; } = new(
        "life.layers",
        new Symbol("t_all", "Life of all layers", TradeUnit.Year),
        "n * t",
        @"n\,t",
        Basis.FirstPrinciples("each layer begins anew when the one above it is gone; under a power law the shorter of the two readings"),
        [new Symbol("n", "layers everywhere", TradeUnit.One), new Symbol("t", "life of one layer", TradeUnit.Year)]);
}
