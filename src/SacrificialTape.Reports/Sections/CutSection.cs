using SacrificialTape.Reports.Blocks;
using SacrificialTape.Reports.Writing;
using SacrificialTape.TakeOff;
using UnitsNet;

namespace SacrificialTape.Reports.Sections;

/// <summary>Which pieces come from which roll.</summary>
internal static class CutSection
{
    internal static IEnumerable<PackBlock> Of(JobPack pack, NumberText text)
    {
        yield return new HeadingBlock(2, "Cut list", NewSheet: true);
        foreach (StockTakeOff stock in pack.Estimate.TakeOff.Stocks)
        {
            CutPlan plan = stock.PlanCuts();
            string proof = plan.ProvedMinimal ? "no plan takes fewer" : $"at least {text.Count(plan.LeastRolls)} would be needed";
            yield return new TableBlock(
                $"{StripText.Of(stock.Stock, pack, text)}: {text.Count(plan.Rolls)} roll(s) of {text.Metres(plan.RollLength)} {text.Long}, {proof}",
                [TableColumn.Of("Rolls"), new($"Cut from each, {text.Long}"), TableColumn.Of($"Left, {text.Long}")],
                [.. plan.Patterns.Select(pattern => (IReadOnlyList<string>)
                [
                    text.Count(pattern.Times),
                    string.Join(" + ", Cuts(pattern, text)),
                    text.Metres(pattern.Remnant),
                ])]);
        }
    }

    // A run may end in a splice: the strip goes on with a run of another roll.
    private static IEnumerable<string> Cuts(CutPattern pattern, NumberText text)
    {
        foreach (CutPiece piece in pattern.Pieces)
        {
            yield return Cut(piece, text);
        }

        foreach (CutPiece run in pattern.Runs)
        {
            yield return $"run {Cut(run, text)}";
        }

        if (pattern.Spare > Length.Zero)
        {
            yield return $"spare {text.Number(text.LongNumber(pattern.Spare), 3)}";
        }
    }

    private static string Cut(CutPiece piece, NumberText text) => $"{text.Count(piece.Count)} x {text.Number(text.LongNumber(piece.Length), 3)}";
}
