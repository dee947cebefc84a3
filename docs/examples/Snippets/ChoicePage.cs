using SacrificialTape.Costing;
using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/choice.md quotes.</summary>
public static class ChoicePage
{
    public static void Choose()
    {
        #region choose
        var pipe = new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(24));
        var thin = new Tape(new Foil(Length.FromMicrometers(80)), new Adhesive(Length.FromMicrometers(25)));
        var thick = new Tape(new Foil(Length.FromMicrometers(150)), new Adhesive(Length.FromMicrometers(25)));
        var stocks = new[] { (thin, 50, 45), (thin, 100, 85), (thick, 100, 140) }
            .Select(one => (Stock: new StripStock(one.Item1, Length.FromMillimeters(one.Item2), Length.FromMeters(33)), Price: one.Item3))
            .ToArray();
        var prices = new CostPrices(
            new ValueList<RollPrice>(stocks.Select(one => new RollPrice(one.Stock, new Money(one.Price, "EUR")))),
            new LabourRate(new Money(50, "EUR")),
            [
                new LabourNorm(new LabourKind(StripPurpose.Ring, ApplicationMethod.ByHand, "pipe"), LabourMeasure.Pieces, Duration.FromMinutes(3)),
                new LabourNorm(new LabourKind(StripPurpose.Spiral, ApplicationMethod.ByHand, "pipe"), LabourMeasure.StripLength, Duration.FromMinutes(1.5)),
            ]);
        var needs = new LineNeeds("P-101", ZincExposure.FromCategory(CorrosivityCategory.C4), Lifetime.Of(Duration.FromYears365(25)));
        var options = new ChoiceOptions(
            new ValueList<StripStock>(stocks.Select(one => one.Stock)),
            leastLaps: [Length.FromMillimeters(5), Length.FromMillimeters(20)],
            passes: [1, 2],
            makers: [LayMaker.Rings(pipe), LayMaker.Spiral(pipe)],
            prices,
            TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05)));
        TapeChoice choice = TapeChoice.Among(needs, options);
        Console.WriteLine($"{choice.Accepted.Count} accepted, {choice.Rejected.Count} rejected");
        foreach (AcceptedLay one in choice.Accepted.Take(4))
        {
            Console.WriteLine($"{one.Cost.Rounded()}  {one.Tried}");
        }

        AcceptedLay best = choice.Best!;
        Console.WriteLine($"best: rolls {best.RollCost.Rounded()}, labour {best.LabourCost.Rounded()}; {best.Pieces} piece(s), {best.Life}");
        foreach (RejectedLay one in choice.Rejected.Take(3))
        {
            Console.WriteLine(one);
        }
        #endregion
    }
}
