using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Strips on shells: as on pipe where they are pipe; laps past the seams and openings in the ledger.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 150)]
public sealed class ShellLays
{
    [Property]
    public void A_shell_without_openings_that_ends_at_its_seams_is_laid_like_pipe(SpanCase given)
    {
        var shell = new Shell(Mm(219.1), Mm(given.SpanMm), ShellAxis.Lying);
        LayChoices choices = Choices(1.5, 12, 3);
        var rings = new RingLay(Pipe(219.1, given.SpanMm), Stock(given.WidthMm), Mm(given.LapMm), choices);
        Same(rings, rings.Rings, rings.Lap, new ShellLay(shell, Stock(given.WidthMm), ShellDirection.Round, Mm(given.LapMm), null, choices));
        var along = new AlongPipeLay(Pipe(219.1, given.SpanMm), Stock(given.WidthMm), Mm(given.LapMm), choices);
        Same(along, along.StripsRound, along.Lap, new ShellLay(shell, Stock(given.WidthMm), ShellDirection.AlongAxis, Mm(given.LapMm), null, choices));
    }

    [Property(MaxTest = 60)]
    public void Every_spot_of_the_shell_lies_under_as_many_strips_as_promised(SpanCase given, byte seed)
    {
        double past = given.WidthMm * (seed % 5) / 4;
        double round = Math.Max(40, given.SpanMm / 3);
        var shell = new Shell(Mm(round / Math.PI), Mm(given.SpanMm), ShellAxis.Upright);
        double length = given.SpanMm + (2 * past);
        foreach (double wander in new[] { 0, given.LapMm / 3 })
        {
            var courses = new ShellLay(shell, Stock(given.WidthMm), ShellDirection.Round, Mm(given.LapMm), Mm(past), Choices(wander));
            var unrolled = new UnrolledPipe(round, length);
            double spacing = given.WidthMm - courses.Lap.Millimeters;
            for (int i = 0; i < courses.SideBySide; i++)
            {
                unrolled.Ring((i * spacing) + (i % 2 == 0 ? 0 : wander), given.WidthMm);
            }

            double[] heights = [.. Some(courses.SideBySide).SelectMany(i => Beside(i * spacing, given.WidthMm)), past, past + given.SpanMm, past + (given.SpanMm / 3)];
            int least = heights.Where(z => z >= past && z <= past + given.SpanMm).Min(z => unrolled.Over(1, z, true));
            Assert.True(least >= courses.LayersEverywhere, $"{least} layers where {courses.LayersEverywhere} were promised.");
            Assert.True(courses.SideBySide == 1 || Near.Same(length, ((courses.SideBySide - 1) * spacing) + given.WidthMm, 1e-9));

            var strips = new ShellLay(shell, Stock(given.WidthMm), ShellDirection.AlongAxis, Mm(given.LapMm), Mm(past), Choices(wander));
            Near.Equal(length, strips.Strips.Single().Length.Millimeters, 0, absolute: 0.000501);
            unrolled = new UnrolledPipe(round, length);
            for (int i = 0; i < strips.SideBySide; i++)
            {
                unrolled.Along((i * round / strips.SideBySide) + (i % 2 == 0 ? 0 : wander), given.WidthMm);
            }

            least = Some(strips.SideBySide).SelectMany(i => Beside(i * round / strips.SideBySide, given.WidthMm))
                .Min(x => unrolled.Over(((x % round) + round) % round, past + (given.SpanMm / 2), true));
            Assert.True(least >= strips.LayersEverywhere, $"{least} layers where {strips.LayersEverywhere} were promised.");
            Assert.True(wander > 0 || (courses.LayersEverywhere == 1 && strips.LayersEverywhere >= 1));
        }
    }

    [Property]
    public void The_ledger_closes_with_openings_and_laps_past_the_seams(SpanCase given, byte seed)
    {
        double past = given.WidthMm * (seed % 5) / 4;
        double size = Math.Max(1, given.SpanMm / 4);
        var shell = new Shell(Mm(given.SpanMm + 50), Mm(given.SpanMm), ShellAxis.Upright, [ShellOpening.Round(Mm(size), 2), ShellOpening.Rectangular(Mm(size), Mm(size))]);
        var whole = new Shell(Mm(given.SpanMm + 50), Mm(given.SpanMm), ShellAxis.Upright);
        foreach (ShellDirection direction in Enum.GetValues<ShellDirection>())
        {
            var lay = new ShellLay(shell, Stock(given.WidthMm), direction, Mm(given.LapMm), Mm(past), Choices(0, 15));
            PanelLays.Ledger(lay, shell.Area.SquareMeters);
            Strip strip = lay.Strips.Single();
            Strip uncut = new ShellLay(whole, Stock(given.WidthMm), direction, Mm(given.LapMm), Mm(past), Choices(0, 15)).Strips.Single();
            Assert.Equal((uncut.Count, uncut.LengthUm), (strip.Count, strip.LengthUm));

            // What is cut out is the tape that lies over the openings: the strips, course by course, times their share.
            double over = 0;
            double spacing = given.WidthMm - lay.Lap.Millimeters;
            for (int i = 0; i < lay.SideBySide; i++)
            {
                double low = direction == ShellDirection.Round ? i * spacing : past;
                double high = direction == ShellDirection.Round ? low + given.WidthMm : past + given.SpanMm;
                over += Math.Max(0, Math.Min(high, past + given.SpanMm) - Math.Max(low, past)) * (direction == ShellDirection.Round ? strip.Length.Millimeters : given.WidthMm);
            }

            double share = 1 - (shell.Area.SquareMeters / shell.GrossArea.SquareMeters);
            Near.Equal(share * over, (strip.Trim - uncut.Trim).Millimeters * strip.Count * given.WidthMm, 1e-6, absolute: 0.0011 * strip.Count * given.WidthMm);
            Assert.True(lay.LayersOnAverage.Ratio * shell.Area.SquareMeters >= (lay.LayersEverywhere * shell.Area.SquareMeters) - (2e-9 * strip.Count * given.WidthMm));
        }
    }

    [Property]
    public void More_lap_never_takes_fewer_metres(SpanCase given)
    {
        var shell = new Shell(Mm(given.SpanMm + 50), Mm(given.SpanMm), ShellAxis.Upright);
        foreach (ShellDirection direction in Enum.GetValues<ShellDirection>())
        {
            var less = new ShellLay(shell, Stock(given.WidthMm), direction, Mm(given.LapMm));
            var more = new ShellLay(shell, Stock(given.WidthMm), direction, Mm((given.LapMm + given.WidthMm) / 2));
            Assert.True(more.Strips[0].TotalLength.Millimeters >= less.Strips[0].TotalLength.Millimeters);
        }
    }

    [Fact]
    public void A_course_longer_than_its_roll_may_be_spliced_and_a_short_one_is_whole()
    {
        Assert.True(new ShellLay(new Shell(Mm(12_000), Mm(9000), ShellAxis.Upright), Stock(100, 30), ShellDirection.Round, Mm(10)).Strips[0].MaySplice);
        Assert.False(new ShellLay(new Shell(Mm(3000), Mm(9000), ShellAxis.Upright), Stock(100, 30), ShellDirection.Round, Mm(10)).Strips[0].MaySplice);
    }

    [Fact]
    public void What_the_crew_is_told_and_what_is_found()
    {
        var tank = new Shell(Mm(3000), Mm(8000), ShellAxis.Upright, [ShellOpening.Round(Mm(610))]);
        var lay = new ShellLay(tank, Stock(), ShellDirection.Round, Mm(5), Mm(30), Choices(2, 5));
        Assert.Contains("the lowest first", lay.Instruction, StringComparison.Ordinal);
        Assert.Contains("30 mm past the seam", lay.Instruction, StringComparison.Ordinal);
        Assert.Equal([RuleIds.MinimumLap, RuleIds.MinimumEndLap, RuleIds.OpeningsWithoutPlace], lay.Judge(RuleSet.Default, "T").Select(static finding => finding.Rule.Id));
        Assert.Contains("shed water sideways", new ShellLay(tank, Stock(), ShellDirection.AlongAxis, Mm(10)).Instruction, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_refused()
    {
        var tank = new Shell(Mm(3000), Mm(8000), ShellAxis.Upright);
        Errors.Refused(() => new ShellLay(tank, Stock(50), ShellDirection.Round, Mm(50)), "leastLap", "50 mm", "less than the strip is wide");
        Errors.Refused(() => new ShellLay(tank, Stock(50), ShellDirection.Round, Mm(5), Mm(60)), "lapPastSeams", "60 mm", "at most the strip's width");
        Errors.Refused(() => new ShellLay(tank, Stock(50), (ShellDirection)7, Mm(5)), "direction", "7");
    }

    // The first and the last strips, and some between.
    private static IEnumerable<int> Some(int count) => Enumerable.Range(0, count).Where(i => i < 8 || i >= count - 8 || i % 97 == 0);

    private static double[] Beside(double low, double width) => [low - 0.01, low, low + 0.01, low + (width / 2), low + width - 0.01, low + width, low + width + 0.01];

    private static void Same(ILay pipe, int count, Length lap, ShellLay shell)
    {
        Assert.Equal(count, shell.SideBySide);
        Near.Equal(lap.Millimeters, shell.Lap.Millimeters, 1e-12);
        Assert.Equal(pipe.LayersEverywhere, shell.LayersEverywhere);
        Near.Equal(pipe.LayersOnAverage.Ratio, shell.LayersOnAverage.Ratio, 1e-9, absolute: 1e-5);
        Strip one = pipe.Strips.Single();
        Strip other = shell.Strips.Single();
        Assert.Equal((one.Count, one.LengthUm, one.MaySplice), (other.Count, other.LengthUm, other.MaySplice));
        Assert.InRange(one.CoverUm - other.CoverUm, -1, 1);
        Assert.InRange(one.TrimUm - other.TrimUm, -1, 1);
    }
}
