using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of strips on a shell as the workings show them.</summary>
internal static class ShellLayFormulas
{
    private static readonly Basis Unrolled = Basis.FirstPrinciples("a cylinder unrolls into a rectangle; the tape past a seam lies on the head");

    private static readonly Symbol PastOne = new("e", "how far the tape reaches past each seam", TradeUnit.Millimeter);
    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Spacing = new("d", "spacing of the courses", TradeUnit.Millimeter);
    private static readonly Symbol Height = new("h", "length or height of the shell", TradeUnit.Millimeter);

    internal static Formula Span { get; } = new(
        "shell-lay.span",
        new Symbol("H", "Along the axis, with the laps past both seams", TradeUnit.Millimeter),
        "h + 2 * e",
        "h + 2 e",
        Unrolled,
        [Height, PastOne]);

    internal static Formula CoursesPastSeam { get; } = new(
        "shell-lay.courses-past-seam",
        new Symbol("i", "Courses that reach past one seam", TradeUnit.One),
        "min(n, ceil(e / d))",
        @"\min\left(n, \left\lceil\frac{e}{d}\right\rceil\right)",
        Unrolled,
        [SpanFormulas.OpenCount.Result, PastOne, Spacing]);

    internal static Formula PastSeam { get; } = new(
        "shell-lay.past-seam",
        new Symbol("b", "Widths of all courses together that lie past one seam", TradeUnit.Millimeter),
        "i * e - d * i * (i - 1) / 2",
        @"i\,e - \frac{d\,i\,(i-1)}{2}",
        Basis.FirstPrinciples("course by course from the end, each a spacing further in"),
        [CoursesPastSeam.Result, PastOne, Spacing]);

    internal static Formula OverCourse { get; } = new(
        "shell-lay.over-course",
        new Symbol("X", "Tape of one course over the shell, openings and all, on average", TradeUnit.SquareMeter),
        "L * (n * w - 2 * b) / n / 1e6",
        @"\frac{L\,(n w - 2 b)}{10^{6}\,n}",
        Unrolled,
        [SpanFormulas.RingLength.Result, SpanFormulas.OpenCount.Result, Width, PastSeam.Result]);

    internal static Formula OverAlone { get; } = new(
        "shell-lay.over-alone",
        new Symbol("X", "Tape of the single course over the shell, openings and all", TradeUnit.SquareMeter),
        "L * h / 1e6",
        @"\frac{L\,h}{10^{6}}",
        Unrolled,
        [SpanFormulas.RingLength.Result, Height]);

    internal static Formula OverAlong { get; } = new(
        "shell-lay.over-along",
        new Symbol("X", "Tape of one strip over the shell, openings and all", TradeUnit.SquareMeter),
        "h * w / 1e6",
        @"\frac{h\,w}{10^{6}}",
        Unrolled,
        [Height, Width]);

    internal static Formula Kept { get; } = new(
        "shell-lay.kept",
        new Symbol("q", "Share of the shell that its openings leave", TradeUnit.One),
        "A / A_gross",
        @"\frac{A}{A_\mathrm{gross}}",
        Basis.FirstPrinciples("openings take tape as the shell does on average"),
        [
            new Symbol("A", "area of the shell", TradeUnit.SquareMeter),
            new Symbol("A_gross", "shell with its openings", TradeUnit.SquareMeter),
        ]);

    internal static Formula CutOut { get; } = new(
        "shell-lay.cut-out",
        new Symbol("y", "Strip of one piece that is cut out over openings, on average", TradeUnit.Millimeter),
        "(1 - q) * X * 1e6 / w",
        @"\frac{(1 - q)\,X \cdot 10^{6}}{w}",
        Unrolled,
        [Kept.Result, OverCourse.Result, Width]);
}
