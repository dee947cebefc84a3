using SacrificialTape.Inspection;
using SacrificialTape.TakeOff;
using Spectre.Console;

namespace PlantSurvey.TankInspections;

/// <summary>Patches to cut, the tape for them, and whether patching is still worth it.</summary>
internal static class RepairReport
{
    internal static void Write(TankInspection one, IAnsiConsole console)
    {
        if (one.Repairs is not { } repairs)
        {
            console.WriteLine("No damage is listed.");
            return;
        }

        console.Write(Patches(repairs));
        foreach (StockTakeOff stock in one.RepairRolls!.Stocks)
        {
            console.WriteLine($"Tape for them: {stock.Rolls} roll(s) of {stock.Stock}, {Sheets.Number(stock.Ledger.Bought.Meters - stock.Ledger.Offcut.Meters, 2)} m used.");
        }

        if (one.Comparison is not { } comparison)
        {
            console.WriteLine("Patch or rewrap: undecided, no rate can be told from the readings.");
            return;
        }

        RepairDecision decision = comparison.Decide(SacrificialTape.Rules.RuleSet.Default);
        console.WriteLine($"Patch or rewrap: {Verdict(decision.Verdict)}. Patches {comparison.Patching.Rounded()} for {InspectionReport.Years(comparison.Remaining)} a, new tape {comparison.Rewrapping.Rounded()} for {TableReport.Years(comparison.NewLife)} a at {comparison.Rate}.");
        foreach (string reason in decision.Reasons)
        {
            console.WriteLine($"  {reason}");
        }
    }

    internal static string Verdict(RepairVerdict verdict) => verdict switch
    {
        RepairVerdict.Patch => "patch",
        RepairVerdict.Rewrap => "rewrap",
        _ => "undecided",
    };

    private static Table Patches(RepairList repairs)
    {
        Table table = Sheets.Titled($"Patches (oval, clear of the cut-out by the margin everywhere; {Sheets.Number(repairs.PatchedArea.SquareMeters, 3)} m2 in all)");
        Sheets.Head(table, "Damage");
        Sheets.HeadWrapped(table, "Cut out, mm");
        Sheets.Head(table, "Patch, mm");
        Sheets.HeadRight(table, "Strips", "of mm");
        foreach (PatchRepair repair in repairs.Repairs)
        {
            CutOut cut = repair.Damage.CutOut;
            table.AddRow(
                repair.Damage.Name,
                $"{(cut.Shape == CutOutShape.Rectangle ? "rectangle" : "oval")} {Sheets.Number(cut.Length.Millimeters, 0)} x {Sheets.Number(cut.Width.Millimeters, 0)}",
                $"{Sheets.Number(repair.Patch.Length.Millimeters, 0)} x {Sheets.Number(repair.Patch.Width.Millimeters, 0)}",
                Sheets.Number(repair.Strip.Count, 0),
                Sheets.Number(repair.Strip.Length.Millimeters, 0));
        }

        return table;
    }
}
