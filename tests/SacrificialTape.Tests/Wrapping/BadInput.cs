using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>What people really get wrong, and what they are told.</summary>
public sealed class BadInput
{
    [Fact]
    public void A_lap_wider_than_the_strip() => Refused(
        static () => new SpiralGeometry(Mm(168.3), Mm(50), SpiralSetting.FromTrueLap(Mm(60))),
        "setting", "60 mm", "50 mm wide", "at least 0 and less than the strip is wide");

    [Fact]
    public void A_lap_as_wide_as_the_strip()
    {
        foreach (Func<Length, SpiralSetting> convention in new Func<Length, SpiralSetting>[] { SpiralSetting.FromTrueLap, SpiralSetting.FromLapAlongPipe, SpiralSetting.FromLapBetweenMarks })
        {
            Refused(() => new SpiralGeometry(Mm(168.3), Mm(50), convention(Mm(50))), "setting", "50 mm", "less than the strip is wide");
        }

        Refused(static () => new RingLay(Pipe(), Stock(50), Mm(50)), "leastLap", "50 mm", "at least 0 and less than 50");
        Refused(static () => new AlongPipeLay(Pipe(), Stock(50), Mm(50)), "leastLap", "50 mm", "at least 0 and less than 50");
    }

    [Fact]
    public void A_negative_lap()
    {
        Refused(static () => SpiralSetting.FromTrueLap(Mm(-5)), "lap", "-5 mm", "at least 0 mm");
        Refused(static () => SpiralSetting.FromLapAlongPipe(Mm(-5)), "lap", "-5 mm", "at least 0 mm");
        Refused(static () => SpiralSetting.FromLapBetweenMarks(Mm(-5)), "lap", "-5 mm", "at least 0 mm");
        Refused(static () => SpiralSetting.FromAdvance(Mm(0)), "advance", "0 mm", "more than 0 mm");
        Refused(static () => new RingLay(Pipe(), Stock(50), Mm(-1)), "leastLap", "-1 mm");
        Refused(static () => new LayChoices(Mm(-1), Mm(0)), "endLap", "-1 mm", "at least 0 mm");
        Refused(static () => new LayChoices(Mm(10), Mm(-2)), "handWander", "-2 mm", "at least 0 mm");
    }

    [Fact]
    public void A_strip_that_advances_more_than_the_pipe_is_round()
    {
        Refused(static () => new SpiralGeometry(Mm(21.3), Mm(100), SpiralSetting.FromTrueLap(Mm(20))),
            "setting", "advances 80 mm", "66.9159", "the lap must be more than 33.084076 mm");
        Refused(static () => new SpiralGeometry(Mm(21.3), Mm(100), SpiralSetting.FromLapAlongPipe(Mm(20))),
            "setting", "20 mm along the pipe", "at most 69.840");
    }

    [Fact]
    public void The_lap_that_the_message_names_is_the_border()
    {
        double border = 100 - (Math.PI * 21.3);
        _ = new SpiralGeometry(Mm(21.3), Mm(100), SpiralSetting.FromTrueLap(Mm(border + 0.001)));
        _ = Assert.Throws<ArgumentOutOfRangeException>(() => new SpiralGeometry(Mm(21.3), Mm(100), SpiralSetting.FromTrueLap(Mm(border - 0.001))));
    }

    [Fact]
    public void An_advance_that_leaves_a_gap()
    {
        Refused(static () => new SpiralGeometry(Mm(168.3), Mm(100), SpiralSetting.FromAdvance(Mm(110))),
            "setting", "110 mm leaves a gap", "more than 0 and at most 101.838014 mm");
        var touching = new SpiralGeometry(Mm(168.3), Mm(100), SpiralSetting.FromAdvance(Mm(101.838)));
        Near.Equal(0, touching.TrueLap.Millimeters, 0, absolute: 0.001);
    }

    [Fact]
    public void A_pipe_too_short_for_level_turns() => Refused(
        static () => new SpiralLay(Pipe(168.3, 150), Stock(100), SpiralSetting.FromTrueLap(Mm(20)), SpiralEnds.LevelTurns()),
        "pipe", "150 mm long is too short", "at least 182.", "Take rings, or trim the spiral flush");

    [Fact]
    public void Turns_passes_and_counts_outside_their_range()
    {
        Refused(static () => SpiralEnds.LevelTurns(0), "atEachEnd", "0 turns", "at least 1 and at most 10 turns");
        Refused(static () => SpiralEnds.LevelTurns(11), "atEachEnd", "11 turns");
        Refused(static () => new LayChoices(Mm(10), Mm(2), 0), "passes", "0 passes", "at least 1 and at most 20 passes");
        Refused(static () => new Strip(Stock(), Mm(1000), 0, StripPurpose.Other, true, Mm(0), Mm(0)), "count", "0");
    }

    [Fact]
    public void A_strip_whose_parts_exceed_it()
    {
        Refused(static () => new Strip(Stock(), Mm(1000), 1, StripPurpose.Other, true, Mm(900), Mm(200)), "cover", "900 mm", "200 mm", "1000 mm");
        Refused(static () => new Strip(Stock(), Mm(0), 1, StripPurpose.Other, true, Mm(0), Mm(0)), "length", "0 mm", "more than 0");
    }

    [Fact]
    public void An_unset_setting()
    {
        InvalidOperationException thrown = Assert.Throws<InvalidOperationException>(static () => new SpiralGeometry(Mm(168.3), Mm(100), default));
        Assert.Contains("SpiralSetting is unset", thrown.Message, StringComparison.Ordinal);
    }

    private static void Refused(Func<object> make, string parameter, params string[] said) => Errors.Refused(make, parameter, said);
}
