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

/// <summary>What docs/stay-clear.md quotes.</summary>
public static class StayClearPage
{
    public static void Line()
    {
        #region line
        StayClear joint = StayClear.Band(StayClearKind.IsolatingJoint, Length.FromMillimeters(200));
        StayClear holes = StayClear.RoundSpot(StayClearKind.WeepHole, Length.FromMillimeters(10), count: 4);
        var pipe = new InterruptedPipe(new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(12)), [joint]);
        var tape = new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25)));
        var stock = new StripStock(tape, Length.FromMillimeters(100), Length.FromMeters(33));
        InterruptedLay lay = InterruptedLay.Of(pipe, span => new RingLay(span, stock, Length.FromMillimeters(20)));
        var line = new SurveyLine(
            "P-101", lay, ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(10)), spots: [holes]);
        var job = new Job("stay clear", [line], TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05)));
        LineEstimate estimate = job.Estimate().Lines[0];
        Console.WriteLine(lay.Description);
        Console.WriteLine($"covered {estimate.Covered.SquareMeters:0.0000} m2, left clear {estimate.LeftClear.SquareMeters:0.0000} m2");
        foreach (Strip strip in estimate.Strips)
        {
            Console.WriteLine($"{strip.Count} of {strip.Length.Millimeters:0.000} mm: cover {strip.Cover.Millimeters:0.000}, lap {strip.Lap.Millimeters:0.000}, trim {strip.Trim.Millimeters:0.000}");
        }

        Console.WriteLine(estimate.CrewSteps.Single(step => step.Activity == CrewActivity.MarkClear).Text);
        #endregion
    }

    public static void Places()
    {
        #region places
        var pipe = new InterruptedPipe(
            new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(12)),
            [
                StayClear.Band(StayClearKind.FlangedJoint, Length.FromMillimeters(150)).At(Length.FromMeters(4)),
                StayClear.Band(StayClearKind.EarthBond, Length.FromMillimeters(100)).At(Length.FromMeters(9.5)),
            ]);
        foreach (PipeSpan span in pipe.Spans)
        {
            Console.WriteLine(span);
        }
        #endregion
    }
}
