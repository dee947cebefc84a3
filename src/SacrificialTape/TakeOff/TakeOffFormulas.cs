using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.TakeOff;

/// <summary>The formulas of the take-off as the workings show them.</summary>
internal static class TakeOffFormulas
{
    private static readonly Basis Counting = Basis.FirstPrinciples("what is bought is whole rolls, and every metre of them goes somewhere");

    internal static Formula Bought { get; } = new(
        "take-off.bought", new Symbol("B", "Strip bought", TradeUnit.Millimeter), "N * R", @"N\,R", Counting,
        [new Symbol("N", "rolls", TradeUnit.One), new Symbol("R", "length of a roll", TradeUnit.Millimeter)]);

    internal static Formula Offcut { get; } = new(
        "take-off.offcut",
        new Symbol("F", "Left on rolls and in remnants", TradeUnit.Millimeter),
        "B - c - l - t - s - k",
        "B - c - l - t - s - k",
        Counting,
        [
            new Symbol("B", "strip bought", TradeUnit.Millimeter),
            new Symbol("c", "cover", TradeUnit.Millimeter),
            new Symbol("l", "lap", TradeUnit.Millimeter),
            new Symbol("t", "trim", TradeUnit.Millimeter),
            new Symbol("s", "splice", TradeUnit.Millimeter),
            new Symbol("k", "contingency", TradeUnit.Millimeter),
        ]);

    internal static Formula LeastRollsByThreshold { get; } = new(
        "take-off.least-rolls-threshold", new Symbol("N_w", "No plan of the whole pieces takes fewer rolls", TradeUnit.One),
        "n_a + n_b + max(0, ceil(e / R))", @"n_a + n_b + \max\left(0, \left\lceil\frac{e}{R}\right\rceil\right)", Counting,
        [
            new Symbol("n_a", "whole pieces so long that none of the shorter ones counted here shares their roll", TradeUnit.One),
            new Symbol("n_b", "the other whole pieces longer than half a roll", TradeUnit.One),
            new Symbol("e", "these and the shorter ones counted, less the rolls of these", TradeUnit.Millimeter),
            new Symbol("R", "length of a roll", TradeUnit.Millimeter),
        ]);

    internal static Formula LeastRollsByShares { get; } = new(
        "take-off.least-rolls-shares", new Symbol("N_w", "No plan of the whole pieces takes fewer rolls", TradeUnit.One),
        "ceil(d / R + f / h)", @"\left\lceil\frac{d}{R}+\frac{f}{h}\right\rceil", Counting,
        [
            new Symbol("d", "whole pieces that are an exact number of shares of a roll cut in h + 1", TradeUnit.Millimeter),
            new Symbol("f", "full shares in the other whole pieces", TradeUnit.One),
            new Symbol("h", "shares of a roll less one", TradeUnit.One),
            new Symbol("R", "length of a roll", TradeUnit.Millimeter),
        ]);

    internal static Formula LeastRolls { get; } = new(
        "take-off.least-rolls", new Symbol("N_min", "No plan takes fewer rolls", TradeUnit.One),
        "max(N_w, ceil((c + l + t + k) / R))", @"\max\left(N_w, \left\lceil\frac{c+l+t+k}{R}\right\rceil\right)", Counting,
        [
            new Symbol("N_w", "rolls that the whole pieces take at least", TradeUnit.One),
            new Symbol("c", "cover", TradeUnit.Millimeter),
            new Symbol("l", "lap", TradeUnit.Millimeter),
            new Symbol("t", "trim", TradeUnit.Millimeter),
            new Symbol("k", "contingency", TradeUnit.Millimeter),
            new Symbol("R", "length of a roll", TradeUnit.Millimeter),
        ]);
}
