using SacrificialTape.Documents;
using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/check-our-numbers.md quotes. The team and its trial are invented.</summary>
public static class CheckOurNumbersPage
{
    private const string TeamFile = """
        {
          "document": "rule set",
          "schema": 1,
          "name": "Estuary team",
          "version": "2026.3",
          "basedOn": { "name": "SacrificialTape common practice", "version": "1", "fingerprint": "THE FINGERPRINT OF THE PARENT" },
          "rules": [],
          "cases": [
            {
              "id": "trial-wrap-6-inch",
              "calculation": "spiral.advance",
              "inputs": { "outside diameter": "168.3 mm", "strip width": "100 mm", "true lap": "20 mm" },
              "expected": "81 mm",
              "tolerance": "0.5 mm",
              "basis": { "kind": "own experience", "note": "mean of ten turns between marks (invented)" }
            },
            {
              "id": "old-spreadsheet",
              "calculation": "spiral.layers-on-average",
              "inputs": { "outside diameter": "168.3 mm", "strip width": "100 mm", "true lap": "20 mm" },
              "expected": "1.2",
              "tolerance": "0.01",
              "basis": { "kind": "own experience", "note": "the sheet added the lap to the width (invented)" }
            }
          ]
        }
        """;

    public static void Verify()
    {
        string json = TeamFile.Replace("THE FINGERPRINT OF THE PARENT", RuleSet.Default.Fingerprint.ToString(), StringComparison.Ordinal);
        #region verify
        Verification verification = RuleSetDocument.Read(json).Verify();
        Console.WriteLine(verification);
        Console.WriteLine(verification.Passed ? "go on" : "stop: find out why first");
        #endregion
    }

    public static void Asked()
    {
        #region asked
        foreach (CaseCalculation calculation in CaseCalculations.All.Where(one => one.Id.StartsWith("spiral.", StringComparison.Ordinal)))
        {
            Console.WriteLine(calculation);
        }
        #endregion
    }

    public static void AsData()
    {
        #region as-data
        var spiral = new SpiralGeometry(Length.FromMillimeters(168.3), Length.FromMillimeters(100), SpiralSetting.FromTrueLap(Length.FromMillimeters(20)));
        WorkingStep step = spiral.ShowWorkings().Steps.First(one => one.Formula.Result.Name == "theta");
        Console.WriteLine($"{step.Formula.Id}: {step.Formula.Result.Name} = {step.Formula.Expression}");
        Console.WriteLine(string.Join(", ", step.Formula.Inputs.Zip(step.Inputs, (symbol, number) => $"{symbol.Name} = {number.Number:R} {symbol.Unit}")));
        Console.WriteLine($"{step.Result.Number:R} {step.Result.Unit}; {step.Formula.Basis.Kind}");
        #endregion
    }

    public static void AsText()
    {
        #region as-text
        Console.WriteLine(new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(12)).ShowWorkings());
        #endregion
    }

    public static void AsMarkdown()
    {
        #region as-markdown
        Console.WriteLine(new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(12)).ShowWorkings().ToMarkdown());
        #endregion
    }

    public static void OfAJob()
    {
        #region of-a-job
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(33));
        var pipe = new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(12));
        var line = new SurveyLine(
            "P-1", new RingLay(pipe, stock, Length.FromMillimeters(20)), ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(15)));
        JobEstimate estimate = new Job("one line", [line], TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05))).Estimate();
        Workings workings = estimate.ShowWorkings();
        Console.WriteLine($"{workings.Steps.Count} steps, of which the line has {estimate.Lines[0].ShowWorkings().Steps.Count}");
        foreach (IGrouping<BasisKind, WorkingStep> kind in workings.Steps.GroupBy(step => step.Formula.Basis.Kind).OrderBy(kind => kind.Key))
        {
            Console.WriteLine($"{kind.Key}: {kind.Count()}");
        }
        #endregion
    }
}
