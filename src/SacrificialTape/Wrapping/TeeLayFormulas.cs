using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of rings on a tee as the workings show them.</summary>
internal static class TeeLayFormulas
{
    private static readonly Basis Saddle = Basis.FirstPrinciples(
        "two cylinders whose axes cross at a right angle; the saddle line stands sqrt(D^2 - d^2 sin^2 t) / 2 above the run's axis");

    private static readonly Basis Between = Basis.FirstPrinciples(
        "the first and the last ring of the run lap on the straight pipe's tape by as much as on each other");

    private static readonly Symbol Run = new("D", "diameter of the run", TradeUnit.Millimeter);
    private static readonly Symbol Branch = new("d", "diameter of the branch", TradeUnit.Millimeter);
    private static readonly Symbol Reach = new("C_e", "centre to end of the run", TradeUnit.Millimeter);
    private static readonly Symbol Lap = new("o", "least lap", TradeUnit.Millimeter);
    private static readonly Symbol Width = new("w", "strip width", TradeUnit.Millimeter);
    private static readonly Symbol Passes = new("k", "passes", TradeUnit.One);
    private static readonly Symbol Count = new("n_r", "Rings on the run", TradeUnit.One);

    internal static Formula RunRings { get; } = new(
        "tee-lay.run-rings", Count, "ceil((2 * C_e + o) / (w - o))", @"\left\lceil\frac{2C+o}{w-o}\right\rceil",
        Between, [Reach, Lap, Width]);

    internal static Formula RunLap { get; } = new(
        "tee-lay.run-lap", new Symbol("o_r", "Lap on the run, equalised", TradeUnit.Millimeter),
        "(n_r * w - 2 * C_e) / (n_r + 1)", @"\frac{n_r\,w - 2C}{n_r+1}", Between, [Count, Width, Reach]);

    internal static Formula Flap { get; } = new(
        "tee-lay.flap", new Symbol("f", "Depth of the branch's flap, along the branch", TradeUnit.Millimeter),
        "v * sqrt(2 / (1 + sqrt(1 - d * d / (D * D))))", @"v\sqrt{\frac{2}{1+\sqrt{1-d^2/D^2}}}",
        Basis.FirstPrinciples("the steepest slope of the saddle line round the branch is k / (1 + sqrt(1 - k^2)), k = d / D; a flap cut lower by the hypotenuse reaches v square to the line everywhere"),
        [new Symbol("v", "lap onto the run, square to the saddle line", TradeUnit.Millimeter), Branch, Run]);

    internal static Formula BranchSpan { get; } = new(
        "tee-lay.branch-span", new Symbol("W_b", "Span along the branch", TradeUnit.Millimeter),
        "M - sqrt(D * D - d * d) / 2 + f + o", @"M - \tfrac12\sqrt{D^2-d^2} + f + o", Saddle,
        [
            new Symbol("M", "centre to end of the branch", TradeUnit.Millimeter), Run, Branch,
            new Symbol("f", "depth of the flap", TradeUnit.Millimeter),
            new Symbol("o", "least lap, also on the tape of the straight branch pipe", TradeUnit.Millimeter),
        ]);

    internal static Formula LeastLap { get; } = new(
        "tee-lay.least-lap", new Symbol("o_min", "Least lap of all", TradeUnit.Millimeter),
        "min(min(o_r, o_b), min(v, o))", @"\min(o_r, o_b, v, o)", Saddle,
        [
            new Symbol("o_r", "lap on the run", TradeUnit.Millimeter),
            new Symbol("o_b", "lap on the branch; the strip width where one ring lies", TradeUnit.Millimeter),
            new Symbol("v", "lap onto the run round the saddle line", TradeUnit.Millimeter),
            new Symbol("o", "lap on the tape of the branch pipe", TradeUnit.Millimeter),
        ]);

    internal static Formula OpenRing { get; } = new(
        "tee-lay.open-ring", new Symbol("L_open", "Shortest ring of the run, both ends at the saddle line", TradeUnit.Millimeter),
        "C_run - D * asin(sqrt(d * d - 4 * x * x) / D)", @"C - D\arcsin\frac{\sqrt{d^2-4x^2}}{D}", Saddle,
        [
            new Symbol("C_run", "circumference of the run", TradeUnit.Millimeter), Run, Branch,
            new Symbol("x", "farther edge of the ring from the branch's axis", TradeUnit.Millimeter),
        ]);

    internal static Formula Crescent { get; } = new(
        "tee-lay.crescent", new Symbol("L_c", "Lowest strip of the branch, one on each flank", TradeUnit.Millimeter),
        "d * acos(sqrt(D * D - 4 * z * z) / d)", @"d\arccos\frac{\sqrt{D^2-4z^2}}{d}", Saddle,
        [Branch, Run, new Symbol("z", "upper edge of the strip plus the flap, above the run's axis", TradeUnit.Millimeter)]);

    internal static Formula Strip { get; } = new(
        "tee-lay.strip", new Symbol("L_all", "Strip of all passes", TradeUnit.Millimeter),
        "k * (L_run + L_branch)", @"k\,(L_\mathrm{run} + L_\mathrm{branch})", Saddle,
        [
            Passes,
            new Symbol("L_run", "length of all strips of the run, one pass", TradeUnit.Millimeter),
            new Symbol("L_branch", "length of all strips of the branch, one pass", TradeUnit.Millimeter),
        ]);

    internal static Formula Trim { get; } = new(
        "tee-lay.trim", new Symbol("T", "Cut off at the saddle line and below the flap", TradeUnit.Millimeter),
        "L_all - k * (L_ends + A_kept * 1e6 / w)", @"L_\mathrm{all} - k\left(L_\mathrm{ends} + \frac{10^{6}\,A_\mathrm{kept}}{w}\right)", Saddle,
        [
            new Symbol("L_all", "strip of all passes", TradeUnit.Millimeter), Passes,
            new Symbol("L_ends", "end laps of one pass", TradeUnit.Millimeter),
            new Symbol("A_kept", "sum over the strips of one pass of what lies within the cuts, end laps left out", TradeUnit.SquareMeter),
            Width,
        ]);
}
