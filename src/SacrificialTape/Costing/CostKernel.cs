using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>How often something is paid within a study, in years, and the notes of what it comes to.</summary>
internal static class CostKernel
{
    /// <summary>m = ceil(N / L): a life that ends with the study is not followed by another.</summary>
    internal static double Purchases<TSteps>(double studyYears, double lifeYears, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double times = Math.Max(1, WithAllowance.Ceiling(studyYears / lifeYears));
        if (TSteps.Records)
        {
            steps.Add(CostFormulas.Purchases, [studyYears, lifeYears], times);
        }

        return times;
    }

    /// <summary>The intervals that are over within the study; one that ends with it counts only if the payment is made then.</summary>
    internal static double Payments<TSteps>(CostTiming timing, double studyYears, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double intervals = studyYears / timing.Years;
        double times = timing.AlsoAtTheEnd ? WithAllowance.Floor(intervals) : WithAllowance.Ceiling(intervals) - 1;
        if (TSteps.Records)
        {
            steps.Add(
                timing.AlsoAtTheEnd ? CostFormulas.PaymentsToTheEnd : CostFormulas.PaymentsBeforeTheEnd, [studyYears, timing.Years], times);
        }

        return times;
    }

    internal static void NoteBought<TSteps>(Money firstCost, double? repeated, Money worth, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            if (repeated is { } again)
            {
                steps.Add(CostFormulas.BoughtAgain, [(double)firstCost.Amount, again], (double)worth.Amount);
            }
            else
            {
                steps.Add(CostFormulas.BoughtOnce, [(double)firstCost.Amount], (double)worth.Amount);
            }
        }
    }

    internal static void NoteLater<TSteps>(Money amount, double first, double? repeated, Money worth, Money before, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            if (repeated is { } again)
            {
                steps.Add(CostFormulas.LaterAgain, [(double)amount.Amount, first, again], (double)worth.Amount);
            }
            else
            {
                steps.Add(CostFormulas.LaterOnce, [(double)amount.Amount, first], (double)worth.Amount);
            }

            steps.Add(
                CostFormulas.WithLater,
                [(double)before.Amount, (double)worth.Amount],
                (double)(before + worth).Amount);
        }
    }

    internal static void NoteAnnual<TSteps>(Money worth, double recovery, double squareMeters, Money each, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        if (TSteps.Records)
        {
            steps.Add(CostFormulas.AnnualPerArea, [(double)worth.Amount, recovery, squareMeters], (double)each.Amount);
        }
    }
}
