using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The formulas of zinc loss as the workings show them.</summary>
internal static class LossFormulas
{
    internal static Basis Linear { get; } = Basis.From(References.LifeProportionalToThickness, "linear on the first-year rate");

    internal static Basis Power { get; } = Basis.From(References.PowerLawExponents);

    internal static Basis PowerForm { get; } = Basis.From(References.PowerLawForm, "with an exponent of the user's own");

    internal static Basis SteelPower { get; } = Basis.From(References.SteelExponents);

    internal static Basis SoilForm { get; } = Basis.From(References.SoilPowerLaw, "with an exponent of the user's own, and straight on after 20 years");

    internal static Basis SoilConstants { get; } = Basis.From(References.SoilConstants, "exponent; the form was read, and straight on after 20 years");

    private static readonly Basis Shape = Basis.FirstPrinciples("the law is a shape: at another first-year rate all losses grow in proportion");

    private static readonly Basis CubicForm = Basis.From(References.MonotoneCubic, "cubic between two points with given slopes");

    private static readonly Symbol Rate = new("r", "first-year rate", TradeUnit.MicrometerPerYear);
    private static readonly Symbol Time = new("t", "time", TradeUnit.Year);
    private static readonly Symbol Exponent = new("b", "time exponent", TradeUnit.One);
    private static readonly Symbol Zinc = new("s", "zinc to lose", TradeUnit.Micrometer);
    private static readonly Symbol Loss = new("D", "Loss of thickness", TradeUnit.Micrometer);
    private static readonly Symbol Life = new("t", "Time to lose it", TradeUnit.Year);
    private static readonly Symbol Knee = new("T", "end of the power law", TradeUnit.Year);

    private static readonly Symbol RateThen = new("r_t", "Rate at that time", TradeUnit.MicrometerPerYear);
    private static readonly Symbol OwnRate = new("r_1", "first-year rate of the curve as stated", TradeUnit.MicrometerPerYear);
    private static readonly Symbol OwnLossSymbol = new("y", "Loss on the curve as stated", TradeUnit.Micrometer);
    private static readonly Symbol StartTime = new("t_0", "time at the point before", TradeUnit.Year);
    private static readonly Symbol StartLoss = new("y_0", "loss at the point before", TradeUnit.Micrometer);
    private static readonly Symbol Share = new("x", "share of the way to the next point, found by bracketing", TradeUnit.One);
    private static readonly Symbol Step = new("h", "time from point to point", TradeUnit.Year);

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

    internal static Formula LinearRate { get; } = new(
        "rate.linear", RateThen, "r", "r", Linear, [Rate]);

    internal static Formula PowerRate { get; } = new(
        "rate.power", RateThen, "r * b * pow(t, b - 1)", @"r\,b\,t^{b-1}", Power, [Rate, Exponent, Time]);

    internal static Formula TangentRate { get; } = new(
        "rate.tangent", RateThen, "r * b * pow(T, b - 1)", @"r\,b\,T^{b-1}", Power, [Rate, Exponent, Knee]);

    internal static Formula StretchedLoss { get; } = new(
        "loss.stretched", Loss, "y * r / r_1", @"y\,\frac{r}{r_1}", Shape, [OwnLossSymbol, Rate, OwnRate]);

    internal static Formula StretchedRate { get; } = new(
        "rate.stretched",
        RateThen,
        "q * r / r_1",
        @"q\,\frac{r}{r_1}",
        Shape,
        [new Symbol("q", "slope of the curve as stated", TradeUnit.MicrometerPerYear), Rate, OwnRate]);

    internal static Formula OwnLoss { get; } = new(
        "life.own-loss", OwnLossSymbol, "s * r_1 / r", @"s\,\frac{r_1}{r}", Shape, [Zinc, OwnRate, Rate]);

    internal static Formula StraightTime { get; } = new(
        "life.straight",
        Life,
        "t_0 + (y - y_0) / q",
        @"t_0 + \frac{y - y_0}{q}",
        Basis.FirstPrinciples("constant rate from one point on"),
        [StartTime, OwnLossSymbol, StartLoss, new Symbol("q", "rate there", TradeUnit.MicrometerPerYear)]);

    internal static Formula CubicLoss { get; } = new(
        "loss.cubic",
        new Symbol("y_x", "Loss there, which must be the loss on the curve", TradeUnit.Micrometer),
        "y_0 + x * (h * d_0 + x * (3 * (y_1 - y_0) - 2 * h * d_0 - h * d_1 + x * (h * d_0 + h * d_1 - 2 * (y_1 - y_0))))",
        @"y_0 + x\,(h d_0 + x\,(3(y_1 - y_0) - 2 h d_0 - h d_1 + x\,(h d_0 + h d_1 - 2(y_1 - y_0))))",
        CubicForm,
        [
            StartLoss, Share, Step,
            new Symbol("d_0", "slope at the point before", TradeUnit.MicrometerPerYear),
            new Symbol("y_1", "loss at the point after", TradeUnit.Micrometer),
            new Symbol("d_1", "slope at the point after", TradeUnit.MicrometerPerYear),
        ]);

    internal static Formula CubicTime { get; } = new(
        "life.cubic", Life, "t_0 + x * h", @"t_0 + x\,h", CubicForm, [StartTime, Share, Step]);

    internal static Formula FirstYearRate { get; } = new(
        "rate.first-year",
        new Symbol("r", "First-year rate", TradeUnit.MicrometerPerYear),
        "D / g",
        @"\frac{D}{g}",
        Shape,
        [new Symbol("D", "loss of thickness", TradeUnit.Micrometer), new Symbol("g", "loss under the law after the same time, over that of the first year", TradeUnit.Year)]);
}
