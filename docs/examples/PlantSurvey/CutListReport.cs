using SacrificialTape.Jobs;
using SacrificialTape.TakeOff;

namespace PlantSurvey;

/// <summary>The cut list, strip by strip.</summary>
internal static class CutListReport
{
    internal static int Write(JobEstimate estimate, TextWriter output)
    {
        foreach (StockTakeOff stock in estimate.TakeOff.Stocks)
        {
            CutPlan plan = stock.PlanCuts();
            output.WriteLine($"{stock.Stock}: {plan}");
            foreach (CutPattern pattern in plan.Patterns)
            {
                output.WriteLine($"  {pattern}");
            }

            if (plan.OffcutsWorthKeeping.Count > 0)
            {
                output.WriteLine($"  keep: {string.Join(", ", plan.OffcutsWorthKeeping)}");
            }
        }

        return 0;
    }
}
