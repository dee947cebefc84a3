using SacrificialTape.Costing;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/patches-and-repair.md quotes.</summary>
public static class PatchesAndRepairPage
{
    private static readonly StripStock Stock = new(
        new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25))), Length.FromMillimeters(100), Length.FromMeters(25));

    private static readonly RepairList Repairs = new(
        [
            new Damage("A", CutOut.Rectangle(Length.FromMillimeters(80), Length.FromMillimeters(30)), PatchPlace.OnPipe(Length.FromMillimeters(168.3)))
                .At(Length.FromMillimeters(400), Length.FromMillimeters(100)),
            new Damage("B", CutOut.Circle(Length.FromMillimeters(40)), PatchPlace.OnPipe(Length.FromMillimeters(168.3)))
                .At(Length.FromMillimeters(470), Length.FromMillimeters(110)),
        ],
        Stock,
        Length.FromMillimeters(10),
        Length.FromMillimeters(5),
        Length.FromMillimeters(10),
        OverlapHandling.Merge);

    public static void Smallest()
    {
        #region smallest
        var cutOut = CutOut.Rectangle(Length.FromMillimeters(80), Length.FromMillimeters(30));
        Console.WriteLine(OvalPatch.Smallest(cutOut, Length.FromMillimeters(5)));
        OvalPatch patch = OvalPatch.Smallest(cutOut, Length.FromMillimeters(5), step: Length.FromMillimeters(5));
        Console.WriteLine(patch);
        Console.WriteLine(patch.ShowWorkings());
        foreach (Finding finding in patch.Judge(RuleSet.Default, "line 7"))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }

    public static void Counterexample()
    {
        #region counterexample
        var cutOut = CutOut.Ellipse(Length.FromMillimeters(100), Length.FromMillimeters(20));
        Console.WriteLine(new OvalPatch(cutOut, Length.FromMillimeters(120), Length.FromMillimeters(40)));
        Console.WriteLine(OvalPatch.Smallest(cutOut, Length.FromMillimeters(10)));
        #endregion
    }

    public static void Repair()
    {
        StripStock stock = Stock;
        #region repair
        PatchPlace pipe = PatchPlace.OnPipe(Length.FromMillimeters(168.3));
        PatchPlace bend = PatchPlace.OnBend(new Bend(Length.FromMillimeters(168.3), Length.FromMillimeters(229), Angle.FromDegrees(90)));
        var repairs = new RepairList(
            [
                new Damage("A", CutOut.Rectangle(Length.FromMillimeters(80), Length.FromMillimeters(30)), pipe)
                    .At(Length.FromMillimeters(400), Length.FromMillimeters(100)),
                new Damage("B", CutOut.Circle(Length.FromMillimeters(40)), pipe)
                    .At(Length.FromMillimeters(470), Length.FromMillimeters(110)),
                new Damage("C", CutOut.Rectangle(Length.FromMillimeters(120), Length.FromMillimeters(40)), bend),
            ],
            stock,
            margin: Length.FromMillimeters(10),
            step: Length.FromMillimeters(5),
            lap: Length.FromMillimeters(10),
            OverlapHandling.Merge);
        foreach (PatchRepair repair in repairs.Repairs)
        {
            Console.WriteLine(repair);
        }

        var choices = new TakeOffChoices(Length.FromMillimeters(10), Length.FromMeters(1), Contingency.FromFraction(0.1));
        Console.WriteLine(StripTakeOff.Of(repairs.Strips, choices));
        foreach (Finding finding in repairs.Judge(RuleSet.Default))
        {
            Console.WriteLine(finding);
        }
        #endregion
    }

    public static void PatchOrRewrap()
    {
        RepairList repairs = Repairs;
        #region patch-or-rewrap
        var prices = new RepairPrices(once: new Money(180, "EUR"), perPatch: new Money(35, "EUR"), perSquareMeter: new Money(60, "EUR"));
        foreach (double left in new[] { 9.0, 2.0, 0.5 })
        {
            var comparison = new RepairComparison(
                Area.FromSquareMeters(12),
                repairs,
                prices.Of(repairs),
                remaining: Duration.FromYears365(left),
                rewrapping: new Money(1450, "EUR"),
                newLife: Lifetime.Of(Duration.FromYears365(38)),
                DiscountRate.FromFractionPerYear(0.03));
            Console.WriteLine(comparison.Decide(RuleSet.Default));
        }
        #endregion
    }
}
