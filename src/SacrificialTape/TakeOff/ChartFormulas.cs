using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.TakeOff;

/// <summary>The formulas of the consumption chart as the workings show them.</summary>
internal static class ChartFormulas
{
    private static readonly Symbol Circumference = new("C", "circumference", TradeUnit.Millimeter);
    private static readonly Symbol TrueAdvance = new("e", "advance across the strip", TradeUnit.Millimeter);

    internal static Formula StripPerMeter { get; } = new(
        "chart.strip-per-meter",
        new Symbol("L_1", "Strip for a metre of pipe", TradeUnit.Millimeter),
        "1000 * C / e",
        @"1000\,\frac{C}{e}",
        Basis.FirstPrinciples("1 / sin(theta) of strip for each length of pipe; ends left out"),
        [Circumference, TrueAdvance]);

    internal static Formula PipePerRoll { get; } = new(
        "chart.pipe-per-roll",
        new Symbol("h_1", "Pipe that a roll covers", TradeUnit.Millimeter),
        "R * e / C",
        @"R\,\frac{e}{C}",
        Basis.FirstPrinciples("1 / sin(theta) of strip for each length of pipe; ends left out"),
        [new Symbol("R", "length of a roll", TradeUnit.Millimeter), TrueAdvance, Circumference]);
}
