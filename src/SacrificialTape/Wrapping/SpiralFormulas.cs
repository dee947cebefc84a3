using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of a spiral on a cylinder as the workings show them.</summary>
internal static class SpiralFormulas
{
    private static readonly Basis Unrolled =
        Basis.FirstPrinciples("the pipe unrolled: the strip is straight, its advances along the axis and across itself are legs of right triangles");

    private static readonly Basis Published = Basis.From(References.TapingACylinder);

    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Lap = new("o", "lap as stated", TradeUnit.Millimeter);
    private static readonly Symbol Circumference = new("C", "circumference", TradeUnit.Millimeter);
    private static readonly Symbol Height = new("h", "length of pipe", TradeUnit.Millimeter);
    private static readonly Symbol Advance = new("p", "Advance along the pipe", TradeUnit.Millimeter);
    private static readonly Symbol TrueAdvance = new("e", "Advance across the strip", TradeUnit.Millimeter);
    private static readonly Symbol Angle = new("theta", "Angle between strip and circumference", TradeUnit.Degree);
    private static readonly Symbol Wander = new("delta", "hand wander", TradeUnit.Millimeter);

    internal static Formula TrueAdvanceFromLap { get; } = new(
        "spiral.true-advance", TrueAdvance, "w - o", "w - o", Unrolled, [Width, Lap]);

    internal static Formula AngleFromTrueAdvance { get; } = new(
        "spiral.angle-from-true-advance", Angle, "asin(e / C) * 180 / pi", @"\arcsin\frac{e}{C}", Published, [TrueAdvance, Circumference]);

    internal static Formula AdvanceFromTrueAdvance { get; } = new(
        "spiral.advance-from-true-advance", Advance, "e / cos(theta * pi / 180)", @"\frac{e}{\cos\theta}", Unrolled, [TrueAdvance, Angle]);

    internal static Formula AdvanceFromLapAlongPipe { get; } = new(
        "spiral.advance-from-lap-along-pipe",
        Advance,
        "(w * w - o * o) / (o + sqrt(max(0, o * o + (1 - w * w / (C * C)) * (w * w - o * o))))",
        @"\frac{w^2-o^2}{o+\sqrt{o^2+\left(1-\frac{w^2}{C^2}\right)(w^2-o^2)}}",
        Basis.FirstPrinciples("w / cos(theta) - p = o with tan(theta) = p / C, solved for p"),
        [Width, Lap, Circumference]);

    internal static Formula AdvanceFromMarks { get; } = new(
        "spiral.advance-from-marks",
        Advance,
        "w - o",
        "w - o",
        Basis.CommonPractice("the setting rule of the wrapping head"),
        [Width, Lap]);

    internal static Formula AngleFromAdvance { get; } = new(
        "spiral.angle-from-advance", Angle, "atan(p / C) * 180 / pi", @"\arctan\frac{p}{C}", Unrolled, [Advance, Circumference]);

    internal static Formula TrueAdvanceFromAdvance { get; } = new(
        "spiral.true-advance-from-advance", TrueAdvance, "p * cos(theta * pi / 180)", @"p\,\cos\theta", Unrolled, [Advance, Angle]);

    internal static Formula TrueLap { get; } = new(
        "spiral.true-lap",
        new Symbol("o_true", "True lap, across the strip", TradeUnit.Millimeter),
        "w - e",
        "w - e",
        Unrolled,
        [Width, TrueAdvance]);

    internal static Formula LapAlongPipe { get; } = new(
        "spiral.lap-along-pipe",
        new Symbol("o_axis", "Lap along the pipe", TradeUnit.Millimeter),
        "w / cos(theta * pi / 180) - p",
        @"\frac{w}{\cos\theta} - p",
        Unrolled,
        [Width, Angle, Advance]);

    internal static Formula LayersOnAverage { get; } = new(
        "spiral.layers-on-average",
        new Symbol("n_mean", "Tape area over pipe area", TradeUnit.One),
        "w / e",
        @"\frac{w}{e}",
        Unrolled,
        [Width, TrueAdvance]);

    internal static Formula TurnsFlush { get; } = new(
        "spiral.turns-flush",
        new Symbol("N", "Turns of the spiral in one pass", TradeUnit.One),
        "h / p",
        @"\frac{h}{p}",
        Unrolled,
        [Height, Advance]);

    internal static Formula TurnsLevel { get; } = new(
        "spiral.turns-between-level-turns",
        new Symbol("N", "Turns of the spiral between level turns, in one pass", TradeUnit.One),
        "(h - w * cos(theta * pi / 180)) / p",
        @"\frac{h - w\cos\theta}{p}",
        Unrolled,
        [Height, Width, Angle, Advance]);

    internal static Formula StripFlush { get; } = new(
        "spiral.strip-flush",
        new Symbol("L", "Strip for one pass, ends trimmed flush", TradeUnit.Millimeter),
        "h / sin(theta * pi / 180) + w / tan(theta * pi / 180)",
        @"\frac{h}{\sin\theta} + \frac{w}{\tan\theta}",
        Published,
        [Height, Width, Angle]);

    internal static Formula StripLevel { get; } = new(
        "spiral.strip-between-level-turns",
        new Symbol("L", "Strip of the spiral between level turns, one pass", TradeUnit.Millimeter),
        "h / sin(theta * pi / 180) - w / tan(theta * pi / 180)",
        @"\frac{h}{\sin\theta} - \frac{w}{\tan\theta}",
        Unrolled,
        [Height, Width, Angle]);

    internal static Formula LevelTurn { get; } = new(
        "spiral.level-turn",
        new Symbol("L", "Strip of one level turn", TradeUnit.Millimeter),
        "C + o",
        "C + o",
        Unrolled,
        [Circumference, new Symbol("o", "end lap", TradeUnit.Millimeter)]);

    internal static Formula LayersInBody { get; } = new(
        "spiral.layers-in-body",
        new Symbol("n_body", "Layers everywhere in the body of one pass", TradeUnit.One),
        "floor(w / (e + delta))",
        @"\left\lfloor\frac{w}{e+\delta}\right\rfloor",
        Unrolled,
        [Width, Wander, TrueAdvance]);

    internal static Formula LayersFlush { get; } = new(
        "spiral.layers-flush",
        new Symbol("n", "Layers everywhere, ends trimmed flush", TradeUnit.One),
        "k * n_body",
        @"k\,n_\mathrm{body}",
        Unrolled,
        [new Symbol("k", "passes", TradeUnit.One), new Symbol("n_body", "layers in the body", TradeUnit.One)]);

    internal static Formula LayersLevel { get; } = new(
        "spiral.layers-level",
        new Symbol("n", "Layers everywhere, level turns at the ends", TradeUnit.One),
        "k * min(m, n_body)",
        @"k\,\min(m, n_\mathrm{body})",
        Basis.FirstPrinciples("near the end lie only the level turns; where they stop, the spiral already lies as in its body, since its square end reaches back"),
        [
            new Symbol("k", "passes", TradeUnit.One),
            new Symbol("m", "level turns on one another at each end", TradeUnit.One),
            new Symbol("n_body", "layers in the body", TradeUnit.One),
        ]);
}
