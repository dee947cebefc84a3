using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace HostTool;

/// <summary>The formulas behind this tool's own surface, lay and loss law, as their workings show them.</summary>
internal static class ColumnFormulas
{
    #region formulas
    private static readonly Basis Octagon = Basis.FirstPrinciples("a regular polygon is as many triangles as it has sides");
    private static readonly Basis Trapezium = Basis.FirstPrinciples("each flat is a trapezium");

    internal static Formula FlatAtFoot { get; } = new(
        "host.octagon.flat-at-foot",
        new Symbol("s_1", "Width of a flat at the foot", TradeUnit.Millimeter),
        "F_1 * tan(pi / n)",
        @"F_1 \tan\frac{\pi}{n}",
        Octagon,
        [new Symbol("F_1", "across flats at the foot", TradeUnit.Millimeter), new Symbol("n", "flats", TradeUnit.One)]);
    #endregion

    internal static Formula FlatAtHead { get; } = new(
        "host.octagon.flat-at-head",
        new Symbol("s_2", "Width of a flat at the head", TradeUnit.Millimeter),
        "F_2 * tan(pi / n)",
        @"F_2 \tan\frac{\pi}{n}",
        Octagon,
        [new Symbol("F_2", "across flats at the head", TradeUnit.Millimeter), new Symbol("n", "flats", TradeUnit.One)]);

    internal static Formula SlantHeight { get; } = new(
        "host.octagon.slant-height",
        new Symbol("l", "Height along a flat", TradeUnit.Millimeter),
        "sqrt(pow(h, 2) + pow((F_1 - F_2) / 2, 2))",
        @"\sqrt{h^2 + \left(\frac{F_1 - F_2}{2}\right)^2}",
        Basis.FirstPrinciples("Pythagoras"),
        [
            new Symbol("h", "height", TradeUnit.Millimeter),
            new Symbol("F_1", "across flats at the foot", TradeUnit.Millimeter),
            new Symbol("F_2", "across flats at the head", TradeUnit.Millimeter),
        ]);

    internal static Formula Area { get; } = new(
        "host.octagon.area",
        new Symbol("A", "Area of all flats", TradeUnit.SquareMeter),
        "n * (s_1 + s_2) / 2 * l / 1000000",
        @"n\,\frac{s_1 + s_2}{2}\,\frac{l}{10^6}",
        Trapezium,
        [
            new Symbol("n", "flats", TradeUnit.One),
            new Symbol("s_1", "width of a flat at the foot", TradeUnit.Millimeter),
            new Symbol("s_2", "width of a flat at the head", TradeUnit.Millimeter),
            new Symbol("l", "height along a flat", TradeUnit.Millimeter),
        ]);

    internal static Formula LapAtFoot { get; } = new(
        "host.flats.lap-at-foot",
        new Symbol("o", "Least lap over an edge, at the foot", TradeUnit.Millimeter),
        "w - s_1",
        "w - s_1",
        Basis.FirstPrinciples("two neighbours reach half the surplus over their edge each; square to it a little more, which is not counted"),
        [new Symbol("w", "strip width", TradeUnit.Millimeter), new Symbol("s_1", "width of a flat at the foot", TradeUnit.Millimeter)]);

    internal static Formula Cover { get; } = new(
        "host.flats.cover",
        new Symbol("c", "Part of a strip that covers once", TradeUnit.Millimeter),
        "l * (s_1 + s_2) / (2 * w)",
        @"l\,\frac{s_1 + s_2}{2\,w}",
        Trapezium,
        [
            new Symbol("l", "height along a flat", TradeUnit.Millimeter),
            new Symbol("s_1", "width of a flat at the foot", TradeUnit.Millimeter),
            new Symbol("s_2", "width of a flat at the head", TradeUnit.Millimeter),
            new Symbol("w", "strip width", TradeUnit.Millimeter),
        ]);

    /// <summary>The law's basis is stated with each of its numbers, so it comes with the call.</summary>
    internal static Formula SaltedTime(Basis basis) => new(
        "host.salted-road.time",
        new Symbol("t", "Time to lose it", TradeUnit.Year),
        "min(s / (f * r), Y) + max(0, s / r - f * Y)",
        @"\min\left(\frac{s}{f\,r},\ Y\right) + \max\left(0,\ \frac{s}{r} - f\,Y\right)",
        basis,
        [
            new Symbol("s", "thickness", TradeUnit.Micrometer),
            new Symbol("f", "rate beside the salted road over the rate of the place", TradeUnit.One),
            new Symbol("r", "loss in the first year", TradeUnit.MicrometerPerYear),
            new Symbol("Y", "years of salting", TradeUnit.Year),
        ]);

    /// <summary>A step of the workings: the formula, what came out, and what went in, in the formula's own units.</summary>
    internal static WorkingStep Step(this Formula formula, double result, params double[] inputs) => new(
        formula,
        new ValueList<Measure>(inputs.Select((number, at) => new Measure(number, formula.Inputs[at].Unit))),
        new Measure(result, formula.Result.Unit));
}
