using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

public sealed class WhatTheCrewIsTold
{
    private static readonly ZincExposure Here = ZincExposure.FromCategory(CorrosivityCategory.C3);

    [Theory]
    [InlineData("flush", LineOrientation.Horizontal, "")]
    [InlineData("flush", LineOrientation.Vertical, "Work from the bottom up, so")]
    [InlineData("level", LineOrientation.Horizontal, "free edge of an end lap face down")]
    [InlineData("rings", LineOrientation.Horizontal, "free edge of an end lap face down")]
    [InlineData("rings", LineOrientation.Vertical, "Work from the bottom up, so")]
    [InlineData("along", LineOrientation.Horizontal, "from the bottom up on both sides")]
    [InlineData("along", LineOrientation.Vertical, "")]
    public void Direction_follows_the_lay(string kind, LineOrientation orientation, string says)
    {
        ILay lay = kind switch
        {
            "flush" => new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20))),
            "level" => new SpiralLay(Pipe(), Stock(), SpiralSetting.FromTrueLap(Mm(20)), SpiralEnds.LevelTurns()),
            "rings" => new RingLay(Pipe(), Stock(), Mm(20)),
            _ => new AlongPipeLay(Pipe(), Stock(), Mm(20)),
        };
        string text = Steps(lay, new SteelCondition(orientation: orientation)).Single(static step => step.Activity == CrewActivity.Lay).Text;
        Assert.StartsWith(lay.Instruction, text, StringComparison.Ordinal);
        Assert.Equal(says.Length == 0, text == lay.Instruction);
        Assert.Contains(says, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Paint_that_stays_is_roughened_and_bare_steel_is_brushed_and_both_warn_of_lead()
    {
        string painted = Steps(new RingLay(Pipe(), Stock(), Mm(20)), new SteelCondition(windowsInPaint: new ContactWindows(900, Area.FromSquareCentimeters(1))))[0].Text;
        string bare = Steps(new RingLay(Pipe(), Stock(), Mm(20)), SteelCondition.Bare)[0].Text;
        Assert.Contains("roughen the sound paint", painted, StringComparison.Ordinal);
        Assert.Contains("wire-brush by machine", bare, StringComparison.Ordinal);
        Assert.All([painted, bare], static text =>
        {
            Assert.Contains("lead and chromate", text, StringComparison.Ordinal);
            Assert.Contains("pressure and height", text, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void An_open_seam_gets_a_strip_of_its_own_length_and_a_closed_one_its_lap()
    {
        var welds = new WeldWork([new GirthWelds(Mm(100), 1), new LongitudinalWelds(Mm(5000), 1)], Stock(), Mm(40));
        var line = new SurveyLine("A", new RingLay(Pipe(100, 5000), Stock(), Mm(20)), Here, Lifetime.Of(Duration.FromYears365(10)), welds: welds);
        string text = Of(line).Single(static step => step.Activity == CrewActivity.Welds).Text;
        Assert.Contains("0.35 m long on each of 1 weld(s) round", text, StringComparison.Ordinal);
        Assert.Contains("5.00 m long on each of 1 weld(s) along", text, StringComparison.Ordinal);
    }

    private static ValueList<CrewStep> Steps(ILay lay, SteelCondition steel) =>
        Of(new SurveyLine("A", lay, Here, Lifetime.Of(Duration.FromYears365(10)), steel));

    private static ValueList<CrewStep> Of(SurveyLine line) => new Job("j", [line], Make.TakeOff()).Estimate().Lines[0].CrewSteps;
}
