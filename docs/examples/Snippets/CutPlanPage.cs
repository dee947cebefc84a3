using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/cut-plan.md quotes.</summary>
public static class CutPlanPage
{
    public static void CutList()
    {
        #region cut-list
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(50), Length.FromMeters(20));
        Length ring = Length.FromMillimeters(6900);
        Length small = Length.FromMillimeters(3100);
        Length spiral = Length.FromMeters(31);
        var choices = TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.02));
        StripTakeOff takeOff = StripTakeOff.Of(
            [
                new Strip(stock, ring, 5, StripPurpose.Ring, maySplice: false, cover: ring, trim: Length.Zero),
                new Strip(stock, small, 3, StripPurpose.Ring, maySplice: false, cover: small, trim: Length.Zero),
                new Strip(stock, spiral, 1, StripPurpose.Spiral, maySplice: true, cover: spiral, trim: Length.Zero),
            ],
            choices);
        CutPlan plan = takeOff.Stocks[0].PlanCuts();
        foreach (CutPattern pattern in plan.Patterns)
        {
            Console.WriteLine(pattern);
        }

        Console.WriteLine(plan);
        Console.WriteLine($"keep {string.Join(", ", plan.OffcutsWorthKeeping)}; scrap {plan.Scrap.Meters:0.00} m");
        #endregion
    }

    public static void PiecesOnly()
    {
        #region pieces-only
        CutPiece[] pieces = [new(Length.FromMeters(4), count: 5), new(Length.FromMeters(3), count: 3)];
        CutPlan plan = CutPlan.Of(pieces, rollLength: Length.FromMeters(10), shortestPiece: Length.FromMeters(1));
        Console.WriteLine($"{plan.Rolls} rolls, at least {plan.LeastRolls}, gap {plan.Gap}");
        Console.WriteLine(plan.ShowWorkings());
        #endregion
    }
}
