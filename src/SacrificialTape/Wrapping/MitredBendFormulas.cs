using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of rings on a mitred bend as the workings show them.</summary>
internal static class MitredBendFormulas
{
    private static readonly Basis Outside = Basis.FirstPrinciples(
        "rings square to a piece cover its longest side, the outside; the tape of each piece reaches past the weld, so that both lap on each other there");

    private static readonly Basis Cutting = Basis.FirstPrinciples(
        "the slant of a mitre unrolls into a cosine; what of a ring lies beyond it is cut off");

    private static readonly Symbol PieceOutside = new("l_out", "middle piece along the outside", TradeUnit.Millimeter);
    private static readonly Symbol WeldLap = new("v", "reach of a piece's tape past the weld", TradeUnit.Millimeter);
    private static readonly Symbol Passes = new("k", "passes", TradeUnit.One);
    private static readonly Symbol Whole = new("n_whole", "rings that go all the way round", TradeUnit.One);
    private static readonly Symbol Short = new("L_short", "length of all pieces that stop at the welds", TradeUnit.Millimeter);

    internal static Formula MiddleSpan { get; } = new(
        "mitred.middle-span", new Symbol("W_m", "Span on a middle piece", TradeUnit.Millimeter),
        "l_out + 2 * v", @"l_\mathrm{out} + 2v", Outside, [PieceOutside, WeldLap]);

    internal static Formula EndSpan { get; } = new(
        "mitred.end-span", new Symbol("W_e", "Span on an end piece", TradeUnit.Millimeter),
        "l_out / 2 + v + o", @"\frac{l_\mathrm{out}}{2} + v + o", Outside,
        [PieceOutside, WeldLap, new Symbol("o", "least lap, also on the tape of the straight pipe", TradeUnit.Millimeter)]);

    internal static Formula LeastLap { get; } = new(
        "mitred.least-lap", new Symbol("o_min", "Least lap of all", TradeUnit.Millimeter),
        "min(min(o_m, o_e), min(2 * v, o))", @"\min(o_\mathrm{m}, o_\mathrm{e}, 2v, o)", Outside,
        [
            new Symbol("o_m", "lap on a middle piece; the strip width where one ring or none lies", TradeUnit.Millimeter),
            new Symbol("o_e", "lap on an end piece; the strip width where one ring lies", TradeUnit.Millimeter),
            WeldLap,
            new Symbol("o", "lap on the tape of the straight pipe", TradeUnit.Millimeter),
        ]);

    internal static Formula ShortPiece { get; } = new(
        "mitred.short-piece", new Symbol("L_s", "Piece that stops at the weld, the first of each kind of piece", TradeUnit.Millimeter),
        "D * acos((z - a) / b)", @"D\arccos\frac{z-a}{b}", Cutting,
        [
            new Symbol("D", "outside diameter of the pipe", TradeUnit.Millimeter),
            new Symbol("z", "nearer edge of the piece, from the middle of a middle piece or from the tangent of an end piece", TradeUnit.Millimeter),
            new Symbol("a", "mean length from there to the cut", TradeUnit.Millimeter),
            new Symbol("b", "by which the outside is longer than the mean", TradeUnit.Millimeter),
        ]);

    internal static Formula Strip { get; } = new(
        "mitred.strip", new Symbol("L_all", "Strip of all passes", TradeUnit.Millimeter),
        "k * (n_whole * L + L_short)", @"k\,(n_\mathrm{whole}\,L + L_\mathrm{short})", Cutting,
        [Passes, Whole, new Symbol("L", "strip of one ring", TradeUnit.Millimeter), Short]);

    internal static Formula Trim { get; } = new(
        "mitred.trim", new Symbol("T", "Cut off along the welds", TradeUnit.Millimeter),
        "k * (n_whole * C + L_short - A_kept * 1e6 / w)",
        @"k\left(n_\mathrm{whole}\,C + L_\mathrm{short} - \frac{10^{6}\,A_\mathrm{kept}}{w}\right)", Cutting,
        [
            Passes, Whole, new Symbol("C", "circumference", TradeUnit.Millimeter), Short,
            new Symbol("A_kept", "sum over the rings of one pass of what lies within the cuts, end laps left out", TradeUnit.SquareMeter),
            new Symbol("w", "strip width", TradeUnit.Millimeter),
        ]);
}
