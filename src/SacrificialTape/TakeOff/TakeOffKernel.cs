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
    /// Each of the long pieces has a roll of its own; what the shorter ones counted have too much for the room beside
    /// them takes further rolls.
    /// </summary>
    internal static double LeastRollsByThreshold<TSteps>(
        long almostWhole, long overHalf, double excessMm, double rollMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double least = almostWhole + overHalf + Math.Max(0, WithAllowance.Ceiling(excessMm / rollMm));
        if (TSteps.Records)
        {
            steps.Add(TakeOffFormulas.LeastRollsByThreshold, [almostWhole, overHalf, excessMm, rollMm], least);
        }

        return least;
    }

    /// <summary>
    /// Pieces rounded down to full shares of a roll, a share then counted a little more: no roll holds more than one roll
    /// so counted, because what is rounded off of a full roll comes to at least a share.
    /// </summary>
    internal static double LeastRollsByShares<TSteps>(double exactMm, long floors, long shareNumber, double rollMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double least = WithAllowance.Ceiling((exactMm / rollMm) + ((double)floors / shareNumber));
        if (TSteps.Records)
        {
            steps.Add(TakeOffFormulas.LeastRollsByShares, [exactMm, floors, shareNumber, rollMm], least);
        }

        return least;
    }

    /// <summary>
    /// No plan takes fewer rolls than the strip needed fills, nor fewer than its whole pieces alone. Splices are left
    /// out: another plan might need none.
    /// </summary>
    internal static double LeastRolls<TSteps>(
        long wholePieces, long coverUm, long lapUm, long trimUm, long contingencyUm, double rollMm, TSteps steps)
        where TSteps : struct, IStepRecorder
    {
        double needed = (coverUm + lapUm + trimUm + contingencyUm) / 1e3;
        double least = Math.Max(wholePieces, WithAllowance.Ceiling(needed / rollMm));
        if (TSteps.Records)
        {
            steps.Add(
                TakeOffFormulas.LeastRolls,
                [wholePieces, coverUm / 1e3, lapUm / 1e3, trimUm / 1e3, contingencyUm / 1e3, rollMm],
                least);
        }

        return least;
    }
}
