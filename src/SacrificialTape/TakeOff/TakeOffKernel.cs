using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.TakeOff;

/// <summary>The sums of a take-off, in doubles for the workings; the ledger itself counts whole micrometres.</summary>
internal static class TakeOffKernel
{
    internal static double BoughtMm<TSteps>(long rolls, double rollMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double bought = rolls * rollMm;
        if (TSteps.Records)
        {
            steps.Add(TakeOffFormulas.Bought, [rolls, rollMm], bought);
        }

        return bought;
    }

    internal static double OffcutMm<TSteps>(double boughtMm, StripLedger ledger, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double offcut = ledger.OffcutUm / 1e3;
        if (TSteps.Records)
        {
            steps.Add(
                TakeOffFormulas.Offcut,
                [
                    boughtMm, ledger.CoverUm / 1e3, ledger.LapUm / 1e3, ledger.TrimUm / 1e3, ledger.SpliceUm / 1e3,
                    ledger.ContingencyUm / 1e3,
                ],
                offcut);
        }

        return offcut;
    }

    /// <summary>
    /// No plan takes fewer rolls than the strip needed fills, nor fewer than there are whole pieces longer than half a
    /// roll, since no two of those share one. Splices are left out: another plan might need none.
    /// </summary>
    internal static double LeastRolls<TSteps>(
        long wholeOverHalf, long coverUm, long lapUm, long trimUm, long contingencyUm, double rollMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double needed = (coverUm + lapUm + trimUm + contingencyUm) / 1e3;
        double least = Math.Max(wholeOverHalf, WithAllowance.Ceiling(needed / rollMm));
        if (TSteps.Records)
        {
            steps.Add(
                TakeOffFormulas.LeastRolls,
                [wholeOverHalf, coverUm / 1e3, lapUm / 1e3, trimUm / 1e3, contingencyUm / 1e3, rollMm],
                least);
        }

        return least;
    }
}
