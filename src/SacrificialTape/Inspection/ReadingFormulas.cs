using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Inspection;

/// <summary>The formulas of readings as the workings show them.</summary>
internal static class ReadingFormulas
{
    private static readonly Basis Sample = Basis.FirstPrinciples("mean and standard deviation of a sample");

    private static readonly Basis Grubbs = Basis.From(References.GrubbsTest);

    private static readonly Symbol Count = new("n", "readings", TradeUnit.One);
    private static readonly Symbol Layers = new("j", "layers measured together", TradeUnit.One);
    private static readonly Symbol Thickness = new("f_t", "Thickness of one foil", TradeUnit.Micrometer);
    private static readonly Symbol MeanSymbol = new("x", "mean", TradeUnit.Micrometer);

    internal static Formula OneFoil { get; } = new(
        "reading.one-foil",
        Thickness,
        "m / j - a",
        @"\frac{m}{j} - a",
        Basis.FirstPrinciples("layers share what was measured; what was left on each is taken off"),
        [
            new Symbol("m", "measured together", TradeUnit.Micrometer), Layers,
            new Symbol("a", "adhesive and facing left on each layer", TradeUnit.Micrometer),
        ]);

    internal static Formula Weighed { get; } = new(
        "reading.weighed",
        Thickness,
        "10000000 * m / (rho * A * j)",
        @"\frac{10^7 m}{\rho A j}",
        Basis.FirstPrinciples("mass over density and area"),
        [
            new Symbol("m", "mass of the cleaned zinc", TradeUnit.Gram),
            new Symbol("rho", "density", TradeUnit.KilogramPerCubicMeter),
            new Symbol("A", "area", TradeUnit.SquareCentimeter), Layers,
        ]);

    internal static Formula Mean { get; } = new(
        "reading.mean", new Symbol("x", "Mean", TradeUnit.Micrometer), "S / n", @"\frac{1}{n}\sum x_i", Sample,
        [new Symbol("S", "sum of the readings", TradeUnit.Micrometer), Count]);

    internal static Formula Deviation { get; } = new(
        "reading.deviation",
        new Symbol("s", "Standard deviation", TradeUnit.Micrometer),
        "sqrt(Q / (n - 1))",
        @"\sqrt{\frac{\sum (x_i - \bar{x})^2}{n - 1}}",
        Sample,
        [new Symbol("Q", "sum of the squared distances from the mean, um2", TradeUnit.One), Count]);

    internal static Formula Critical { get; } = new(
        "reading.outlier-critical",
        new Symbol("G_c", "Critical distance of the farthest reading", TradeUnit.One),
        "(n - 1) / sqrt(n) * sqrt(t * t / (n - 2 + t * t))",
        @"\frac{n-1}{\sqrt{n}}\sqrt{\frac{t^2}{n - 2 + t^2}}",
        Grubbs,
        [Count, new Symbol("t", "Student's t, exceeded with the significance over 2 n at n - 2 degrees of freedom", TradeUnit.One)]);

    internal static Formula Distance { get; } = new(
        "reading.outlier-distance",
        new Symbol("G", "Distance of a reading from the mean, in standard deviations", TradeUnit.One),
        "sqrt(pow(x_i - x, 2)) / s",
        @"\frac{|x_i - \bar{x}|}{s}",
        Grubbs,
        [new Symbol("x_i", "the reading", TradeUnit.Micrometer), MeanSymbol, new Symbol("s", "standard deviation", TradeUnit.Micrometer)]);
}
