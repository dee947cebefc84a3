using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>What stays clear, from the survey line to ledger and crew sheet.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 100)]
public sealed class WhatStaysClear
{
    private static readonly ZincExposure Here = ZincExposure.FromCategory(CorrosivityCategory.C3);
    private static readonly Lifetime Ten = Lifetime.Of(Duration.FromYears365(10));

    [Property]
    public void Spots_leave_the_strips_and_become_trim(SpiralCase given, byte percent)
    {
        StraightPipe pipe = Pipe(given.DiameterMm, given.HeightMm);
        double share = (percent % 90) / 100.0;
        double side = Math.Sqrt(pipe.Area.SquareMeters * 1e6 * Math.Max(share, 0.001));
        ILay lay = new SpiralLay(pipe, Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), SpiralEnds.LevelTurns(), Choices());
        LineEstimate line = Of(new SurveyLine("A", lay, Here, Ten, spots: [StayClear.Spot(StayClearKind.NamePlate, Mm(side), Mm(side), 1, Mm(0))]));
        double left = side * side / 1e6;
        Near.Equal(left, line.LeftClear.SquareMeters, 1e-12);
        Near.Equal(pipe.Area.SquareMeters - left, line.Covered.SquareMeters, 1e-12);
        Assert.Equal(lay.Strips.Count, line.Strips.Count);
        foreach ((Strip whole, Strip cut) in lay.Strips.Zip(line.Strips))
        {
            Assert.Equal((whole.LengthUm, whole.Count, whole.Purpose), (cut.LengthUm, cut.Count, cut.Purpose));
            Assert.Equal(cut.LengthUm, cut.CoverUm + cut.LapUm + cut.TrimUm);
            Near.Equal(whole.CoverUm * (1 - (left / pipe.Area.SquareMeters)), cut.CoverUm, 0, absolute: 1.001);
            Near.Equal(whole.LapUm * (1 - (left / pipe.Area.SquareMeters)), cut.LapUm, 0, absolute: 1.001);
        }

        // What covers the steel once is as large as the steel that is covered.
        double cover = line.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count) * given.WidthMm / 1e6;
        Near.Equal(line.Covered.SquareMeters, cover, 1e-4, absolute: 4e-6 * given.WidthMm);
        StripLedger ledger = StripTakeOff.Of(line.Strips, Make.TakeOff()).Stocks[0].Ledger;
        Assert.Equal(ledger.BoughtUm, ledger.NeededUm + ledger.SpliceUm + ledger.ContingencyUm + ledger.OffcutUm);
        Assert.Equal(StripTakeOff.Of(lay.Strips, Make.TakeOff()).Stocks[0].Rolls, StripTakeOff.Of(line.Strips, Make.TakeOff()).Stocks[0].Rolls);
    }

    [Fact]
    public void Bands_and_spots_add_up()
    {
        LineEstimate line = Of(Interrupted([StayClear.RoundSpot(StayClearKind.WeepHole, Mm(10), 4)]));
        Near.Equal((Math.PI * 0.1683 * 0.4) + (4 * Math.PI * 0.05 * 0.05 / 4), line.LeftClear.SquareMeters, 1e-12);
        Near.Equal(Math.PI * 0.1683 * 12, line.LeftClear.SquareMeters + line.Covered.SquareMeters, 1e-12);
        Assert.Equal(["1 isolating joint(s), band 200 mm long all round, margin 100 mm", "4 weep hole(s), round 10 mm, margin 20 mm"], line.Line.AllStayClear.Select(static one => one.ToString()));
    }

    [Fact]
    public void Windows_are_held_against_what_is_covered()
    {
        StayClear half = StayClear.Spot(StayClearKind.InspectionPoint, Length.FromMeters(6), Mm(168.3 * Math.PI), 1, Mm(0));
        LineEstimate line = Of(new SurveyLine("A", Rings(), Here, Ten, new SteelCondition(windowsInPaint: new ContactWindows(10, Area.FromSquareCentimeters(25))), spots: [half]));
        Near.Equal(250 / (Math.PI * 0.1683 * 6), line.Contact!.Ratio.SquareCentimetersPerSquareMeter, 1e-12);
    }

    [Fact]
    public void The_crew_marks_after_cleaning_and_is_told_why()
    {
        ValueList<CrewStep> steps = Of(Interrupted(
        [
            StayClear.Spot(StayClearKind.EarthBond, Mm(60), Mm(40)), StayClear.RoundSpot(StayClearKind.WeepHole, Mm(10), 4),
            StayClear.RoundSpot(StayClearKind.InspectionPoint, Mm(50)), StayClear.Spot(StayClearKind.NamePlate, Mm(100), Mm(50)), StayClear.Spot(StayClearKind.MovingPart, Mm(100), Mm(50)),
        ])).CrewSteps;
        Assert.Equal([CrewActivity.Clean, CrewActivity.MarkClear, CrewActivity.Lay, CrewActivity.RollDown, CrewActivity.Look], steps.Select(static step => step.Activity));
        string mark = steps[1].Text;
        Assert.StartsWith(
            "Mark and mask what stays clear, each with its margin: 1 isolating joint(s), band 200 mm long all round, margin 100 mm; 1 earth bond(s), 60 x 40 mm, margin 50 mm; 4 weep hole(s), round 10 mm, margin 20 mm;",
            mark,
            StringComparison.Ordinal);
        Assert.Contains("Lay nothing inside the marks and take the masks off at the end.", mark, StringComparison.Ordinal);
        Assert.Contains("Never bridge an isolating joint with zinc: it conducts", mark, StringComparison.Ordinal);
        Assert.Contains("Never bridge or cover an earth bond with zinc: it hides the lug", mark, StringComparison.Ordinal);
        Assert.Contains("Only a licensed electrician loosens a bond.", mark, StringComparison.Ordinal);
        Assert.Contains("covered weep hole hides a leak", mark, StringComparison.Ordinal);
        Assert.Contains("the gauge must reach", mark, StringComparison.Ordinal);
        Assert.Contains("must stay legible", mark, StringComparison.Ordinal);
        Assert.Contains("lock it before you work there", mark, StringComparison.Ordinal);
        Assert.DoesNotContain("bolts and gasket", mark, StringComparison.Ordinal);
        string lay = steps[2].Text;
        Assert.StartsWith("Lay each span for itself, with its own ends; lay nothing between them. From 0.000 to 5.800 m, from 6.200 to 12.000 m: Lay 73 rings", lay, StringComparison.Ordinal);
        Assert.EndsWith("never cut with a blade on the steel.", lay, StringComparison.Ordinal);
        Assert.DoesNotContain(Of(Interrupted()).CrewSteps, static step => step.Text.Contains("blade", StringComparison.Ordinal));
        Assert.Contains("bolts and gasket", Of(new SurveyLine("A", Rings(), Here, Ten, spots: [StayClear.RoundSpot(StayClearKind.FlangedJoint, Mm(50))])).CrewSteps[1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_say_what_the_zinc_beside_bare_steel_suffers()
    {
        Assert.Single(Of(Interrupted()).Findings, static one => one.Rule.Id == RuleIds.SteelLeftClear && one.Severity == Severity.Note);
        Assert.DoesNotContain(Of(new SurveyLine("A", Rings(), Here, Ten)).Findings, static one => one.Rule.Id == RuleIds.SteelLeftClear);
        LineEstimate bridged = Of(new SurveyLine("A", Rings(), Here, Ten, spots: [StayClear.RoundSpot(StayClearKind.IsolatingJoint, Mm(100))]));
        Assert.All(bridged.CrewSteps, static step => Assert.Contains("would bridge it", step.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void What_does_not_fit_is_refused()
    {
        Errors.Refused(
            static () => new SurveyLine("A", Rings(), Here, Ten, spots: [StayClear.Spot(StayClearKind.NamePlate, Mm(3000), Mm(3000), 1, Mm(0))]),
            "spots", "9 m2", "less than 6.344761 m2", "the area of pipe 168.3 mm, 12 m long");
        Assert.Contains("InterruptedPipe", Assert.Throws<ArgumentException>(static () => new SurveyLine("A", Rings(), Here, Ten, spots: [StayClear.Band(StayClearKind.FlangedJoint, Mm(100))])).Message, StringComparison.Ordinal);
    }

    private static ILay Rings() => new RingLay(Pipe(), Stock(), Mm(20));

    private static SurveyLine Interrupted(ValueList<StayClear>? spots = null) => new(
        "A",
        InterruptedLay.Of(new InterruptedPipe(Pipe(), [StayClear.Band(StayClearKind.IsolatingJoint, Mm(200))]), static span => new RingLay(span, Stock(), Mm(20))),
        Here,
        Ten,
        spots: spots);

    private static LineEstimate Of(SurveyLine line) => new Job("j", [line], Make.TakeOff()).Estimate().Lines[0];
}
