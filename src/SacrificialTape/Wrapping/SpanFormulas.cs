using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of parallel strips (rings, strips along a pipe, weld strips) as the workings show them.</summary>
internal static class SpanFormulas
{
    private static readonly Basis Counting =
        Basis.FirstPrinciples("n strips of width w with n - 1 laps fill an open span; with n laps they close a circumference");

    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Lap = new("o", "least lap", TradeUnit.Millimeter);
    private static readonly Symbol Span = new("W", "span to cover", TradeUnit.Millimeter);
    private static readonly Symbol Circumference = new("C", "circumference", TradeUnit.Millimeter);
    private static readonly Symbol Count = new("n", "Strips side by side", TradeUnit.One);
    private static readonly Symbol Equalised = new("o_eq", "Lap, equalised", TradeUnit.Millimeter);

    internal static Formula OpenCount { get; } = new(
        "span.open-count", Count, "max(1, ceil((W - o) / (w - o)))", @"\max\left(1, \left\lceil\frac{W-o}{w-o}\right\rceil\right)",
        Counting, [Span, Width, Lap]);

    internal static Formula OpenLap { get; } = new(
        "span.open-lap", Equalised, "(n * w - W) / (n - 1)", @"\frac{n\,w - W}{n-1}", Counting, [Count, Width, Span]);

    internal static Formula ClosedCount { get; } = new(
        "span.closed-count", Count, "ceil(C / (w - o))", @"\left\lceil\frac{C}{w-o}\right\rceil",
        Counting, [Circumference, Width, Lap]);

    internal static Formula ClosedLap { get; } = new(
        "span.closed-lap", Equalised, "w - C / n", @"w - \frac{C}{n}", Counting, [Width, Circumference, Count]);

    internal static Formula RingLength { get; } = new(
        "span.ring-length", new Symbol("L", "Strip of one ring", TradeUnit.Millimeter), "C + o", "C + o",
        Basis.CommonPractice("a ring laps on its own end"), [Circumference, new Symbol("o", "end lap", TradeUnit.Millimeter)]);

    internal static Formula OpenLayers { get; } = new(
        "span.open-layers",
        new Symbol("n_all", "Layers everywhere", TradeUnit.One),
        "k * min(1, floor(w / (s + delta)))",
        @"k\,\min\left(1, \left\lfloor\frac{w}{s+\delta}\right\rfloor\right)",
        Basis.FirstPrinciples("at an open end lies one strip only, whatever the lap"),
        [
            new Symbol("k", "passes", TradeUnit.One),
            Width,
            new Symbol("delta", "hand wander", TradeUnit.Millimeter),
            new Symbol("s", "spacing of the strips", TradeUnit.Millimeter),
        ]);

    internal static Formula ClosedLayers { get; } = new(
        "span.closed-layers",
        new Symbol("n_all", "Layers everywhere", TradeUnit.One),
        "k * floor(w / (C / n + delta))",
        @"k\left\lfloor\frac{w}{C/n+\delta}\right\rfloor",
        Counting,
        [
            new Symbol("k", "passes", TradeUnit.One),
            Width,
            new Symbol("delta", "hand wander", TradeUnit.Millimeter),
            Circumference,
            Count,
        ]);
}
