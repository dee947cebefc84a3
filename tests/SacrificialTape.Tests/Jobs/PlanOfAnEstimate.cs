using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>The inspection plan that an estimate makes.</summary>
public sealed class PlanOfAnEstimate
{
    private static readonly RingLay Lay = new(Pipe(), Stock(), Mm(20));

    [Fact]
    public void Every_line_is_in_it_with_what_lies_under_its_tape()
    {
        var exposed = ZincExposure.FromCategory(CorrosivityCategory.C3);
        var five = Lifetime.Of(Duration.FromYears365(5));
        var counted = new SteelCondition(windowsInPaint: new ContactWindows(5, Area.FromSquareCentimeters(25)));
        SurveyLine[] lines =
        [
            new(new LineNeeds("bare", exposed, five), Lay),
            new(new LineNeeds("counted", exposed, five, counted), Lay),
            new(new LineNeeds("placed", exposed, five, windows: new WindowLayout(new(Pipe()), [])), Lay),
        ];
        JobEstimate estimate = new Job("job", lines, Make.TakeOff()).Estimate();

        InspectionPlan plan = estimate.PlanInspection(SamplingScheme.Iso19840);

        Assert.Equal(["bare", "counted", "placed"], plan.Lines.Select(static line => line.Tag));
        Assert.Equal([false, true, true], plan.Lines.Select(static line => line.PaintStays));
        Assert.All(plan.Lines, static line => Assert.False(line.HasWelds));
        Assert.All(plan.Lines, static line => Assert.Equal(Pipe().Area.SquareMeters, line.Area.SquareMeters, 12));
        Assert.All(plan.Lines, static line => Assert.Equal(Lay.LayersEverywhere, line.Layers));
        Assert.Same(estimate.Job.Rules, plan.Rules);
        Assert.Equal(SamplingScheme.Iso19840, plan.ThicknessSampling);
        Assert.Null(estimate.PlanInspection().ThicknessSampling);
    }
}
