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

    internal static Formula LeastRolls { get; } = new(
        "take-off.least-rolls", new Symbol("N_min", "No plan takes fewer rolls", TradeUnit.One),
        "max(q, ceil((c + l + t + k) / R))", @"\max\left(q, \left\lceil\frac{c+l+t+k}{R}\right\rceil\right)", Counting,
        [
            new Symbol("q", "whole pieces longer than half a roll, no two of which share one", TradeUnit.One),
            new Symbol("c", "cover", TradeUnit.Millimeter),
            new Symbol("l", "lap", TradeUnit.Millimeter),
            new Symbol("t", "trim", TradeUnit.Millimeter),
            new Symbol("k", "contingency", TradeUnit.Millimeter),
            new Symbol("R", "length of a roll", TradeUnit.Millimeter),
        ]);
}
