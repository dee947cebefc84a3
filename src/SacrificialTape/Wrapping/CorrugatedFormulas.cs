using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>The formulas of strips on corrugated sheet as the workings show them.</summary>
internal static class CorrugatedFormulas
{
    private static readonly Basis Unfolded = Basis.FirstPrinciples(
        "a sheet folded along straight lines unrolls flat, and so does the strip on it: a strip folds without strain, but must lie on every face");

    private static readonly Symbol Valley = new("v", "flat width of a valley", TradeUnit.Millimeter);

    internal static Formula Pitch { get; } = new(
        "corrugated-lay.developed-pitch",
        new Symbol("u", "Developed width of one pitch", TradeUnit.Millimeter),
        "c + v + 2 * sqrt(h * h + pow((p - c - v) / 2, 2))",
        @"c + v + 2\sqrt{h^2 + \left(\frac{p - c - v}{2}\right)^2}",
        Unfolded,
        [
            new Symbol("c", "flat width of a crown", TradeUnit.Millimeter),
            Valley,
            new Symbol("h", "depth of the corrugation", TradeUnit.Millimeter),
            new Symbol("p", "pitch, crown to crown", TradeUnit.Millimeter),
        ]);

    internal static Formula Width { get; } = new(
        "corrugated-lay.developed-width",
        new Symbol("U", "Developed width of the sheet", TradeUnit.Millimeter),
        "N * u + f",
        "N u + f",
        Unfolded,
        [
            new Symbol("N", "number of corrugations", TradeUnit.One),
            Pitch.Result,
            new Symbol("f", "flat width beside them", TradeUnit.Millimeter),
        ]);

    internal static Formula InsideCorners { get; } = new(
        "corrugated-lay.inside-corners",
        new Symbol("j", "Inside corners under one strip, at most", TradeUnit.One),
        "min(m, 1) * min(N, ceil(w / u)) + max(0, m - 1) * max(min(N, max(0, ceil((w - v) / u))), min(N - 1, max(0, ceil((w - u + v) / u))))",
        @"\min(m,1)\min\left(N,\left\lceil\frac{w}{u}\right\rceil\right) + \max(0,m-1)\max\left(\min\left(N,\left\lceil\frac{w-v}{u}\right\rceil_{\ge 0}\right),\; \min\left(N-1,\left\lceil\frac{w-u+v}{u}\right\rceil_{\ge 0}\right)\right)",
        Basis.FirstPrinciples("the strip that begins just before a corner reaches over the most of them, wherever the lay begins"),
        [
            new Symbol("m", "inside corners of one valley: 2, or 1 where it has no floor, or 0 on a flat sheet", TradeUnit.One),
            new Symbol("N", "number of corrugations", TradeUnit.One),
            new Symbol("w", "strip width", TradeUnit.Millimeter),
            Pitch.Result,
            Valley,
        ]);
}
