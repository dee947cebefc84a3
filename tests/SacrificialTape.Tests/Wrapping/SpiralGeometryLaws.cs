using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 300)]
public sealed class SpiralGeometryLaws
{
    [Property]
    public void Every_convention_leads_to_the_same_spiral(SpiralCase given)
    {
        SpiralGeometry first = By(given, SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)));
        var settings = new List<SpiralSetting> { SpiralSetting.FromAdvance(first.Advance) };
        if (given.OneLapAlongPipe)
        {
            settings.Add(SpiralSetting.FromLapAlongPipe(first.LapAlongPipe));
        }

        if (given.WidthMm > first.Advance.Millimeters)
        {
            settings.Add(SpiralSetting.FromLapBetweenMarks(Mm(given.WidthMm) - first.Advance));
        }

        foreach (SpiralGeometry other in settings.Select(setting => By(given, setting)))
        {
            Near.Equal(first.Advance.Millimeters, other.Advance.Millimeters, 1e-10, "advance");
            Near.Equal(first.TrueAdvance.Millimeters, other.TrueAdvance.Millimeters, 1e-10, "true advance");
            Near.Equal(first.Angle.Degrees, other.Angle.Degrees, 1e-10, "angle");
        }
    }

    [Property]
    public void Angle_advance_and_circumference_are_sides_of_one_triangle(SpiralCase given)
    {
        SpiralGeometry spiral = By(given, SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)));
        double angle = spiral.Angle.Radians;
        Near.Equal(spiral.Advance.Millimeters, given.CircumferenceMm * Math.Tan(angle), 1e-10, "tan");
        Near.Equal(spiral.TrueAdvance.Millimeters, given.CircumferenceMm * Math.Sin(angle), 1e-10, "sin");
        Near.Equal(spiral.TrueAdvance.Millimeters, spiral.Advance.Millimeters * Math.Cos(angle), 1e-10, "cos");
        Near.Equal(given.AdvanceAcrossMm, spiral.TrueAdvance.Millimeters, 1e-12);
        Near.Equal(given.WidthMm / given.AdvanceAcrossMm, spiral.LayersOnAverage.Ratio, 1e-12);
    }

    [Property]
    public void True_lap_is_the_smallest_lap_along_the_pipe_larger_and_the_marks_name_less_than_they_give(SpiralCase given)
    {
        SpiralGeometry spiral = By(given, SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)));
        double marks = given.WidthMm - spiral.Advance.Millimeters;
        Assert.True(spiral.TrueLap.Millimeters <= spiral.LapAlongPipe.Millimeters + 1e-9);
        Assert.True(marks <= spiral.TrueLap.Millimeters + 1e-9);
        Near.Equal(spiral.TrueLap.Millimeters, spiral.LapAlongPipe.Millimeters * Math.Cos(spiral.Angle.Radians), 1e-9, absolute: 1e-9);
    }

    // Along the middle of the strip every turn is the slant of circumference and advance: what is laid is that many of them.
    [Property]
    public void Turns_are_the_strip_that_is_laid_over_the_strip_of_one_turn(SpiralCase given)
    {
        foreach (SpiralEnds ends in new[] { SpiralEnds.TrimmedFlush, SpiralEnds.LevelTurns(given.LevelTurns) })
        {
            var lay = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), ends);
            double one = Math.Sqrt((given.CircumferenceMm * given.CircumferenceMm) + (lay.Geometry.Advance.Millimeters * lay.Geometry.Advance.Millimeters));
            Strip spiral = lay.Strips.Single(static strip => strip.Purpose == StripPurpose.Spiral);
            Near.Equal((spiral.Length - spiral.Trim).Millimeters, lay.Turns * one, 1e-9, absolute: 0.0011);
        }
    }

    // 24 m at marks 100 mm apart: 240 turns, whatever the pipe; the strip of a pass is not in them a second time.
    [Fact]
    public void Marks_count_turns()
    {
        var lay = new SpiralLay(Pipe(168.3, 24_000), Stock(120), SpiralSetting.FromAdvance(Mm(100)), choices: Choices(0, 0, 3));
        Near.Equal(240, lay.Turns, 1e-12);
    }

    [Fact]
    public void Strip_of_a_lay_is_all_its_pieces_together()
    {
        var lay = new RingLay(Pipe(219.1, 5000), Stock(100), Mm(20), Choices(1.5, 15, 2));
        Assert.Equal(lay.Strips.Sum(static strip => strip.TotalLength.Millimeters), lay.StripLength().Millimeters, 1e-6);
        Assert.Equal(2 * lay.Rings, lay.Strips.Sum(static strip => strip.Count));
        Assert.Equal(2 * lay.Rings * ((Math.PI * 219.1) + 15), lay.StripLength().Millimeters, 0.001 * 2 * lay.Rings);
        Assert.Throws<ArgumentNullException>("lay", static () => ((ILay)null!).StripLength());
    }

    [Property]
    public void On_ever_larger_pipe_the_conventions_agree(SpanCase given)
    {
        double last = double.MaxValue;
        foreach (double diameter in new[] { 1000.0, 10_000, 100_000 })
        {
            double[] advances =
            [
                .. new[] { SpiralSetting.FromTrueLap(Mm(given.LapMm)), SpiralSetting.FromLapAlongPipe(Mm(given.LapMm)), SpiralSetting.FromLapBetweenMarks(Mm(given.LapMm)) }
                    .Select(setting => new SpiralGeometry(Mm(diameter), Mm(given.WidthMm), setting).Advance.Millimeters),
            ];
            double apart = advances.Max() - advances.Min();

            // Apart by about w^3 / (2 C^2): a hundredth for a tenfold diameter.
            Assert.True(apart < last / 50 || apart < 1e-9, $"{apart} after {last}");
            last = apart;
        }
    }

    [Property]
    public void Scaling_all_lengths_scales_lengths_and_leaves_angle_and_layers(SpiralCase given)
    {
        const double Scale = 1.75;
        SpiralSetting setting = SpiralSetting.FromTrueLap(Mm(given.TrueLapMm));
        double diameter = given.DiameterMm;
        foreach (SpiralEnds ends in new[] { SpiralEnds.TrimmedFlush, SpiralEnds.LevelTurns(given.LevelTurns) })
        {
            var one = new SpiralLay(Pipe(diameter, given.HeightMm), Stock(given.WidthMm), setting, ends, Choices(given.WidthMm / 50));
            var scaled = new SpiralLay(
                Pipe(diameter * Scale, given.HeightMm * Scale), Stock(given.WidthMm * Scale), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm * Scale)), ends, Choices(given.WidthMm / 50 * Scale, 10 * Scale));
            Near.Equal(one.Geometry.Angle.Degrees, scaled.Geometry.Angle.Degrees, 1e-12);
            Assert.Equal(one.LayersEverywhere, scaled.LayersEverywhere);
            Assert.Equal(one.Strips.Count, scaled.Strips.Count);
            for (int i = 0; i < one.Strips.Count; i++)
            {
                // Both are rounded to whole micrometres, cover after length and trim.
                Near.Equal(one.Strips[i].Length.Millimeters * Scale, scaled.Strips[i].Length.Millimeters, 0, absolute: 0.004);
                Near.Equal(one.Strips[i].Cover.Millimeters * Scale, scaled.Strips[i].Cover.Millimeters, 0, absolute: 0.004);
                Assert.Equal(one.Strips[i].Count, scaled.Strips[i].Count);
            }
        }
    }

    [Property]
    public void More_lap_never_takes_less_strip_nor_gives_fewer_layers(SpiralCase given, byte more)
    {
        double lap = given.TrueLapMm + ((given.WidthMm - given.TrueLapMm) * more / 260);
        var choices = Choices(1);
        var less = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), null, choices);
        var larger = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(lap)), null, choices);
        Assert.True(larger.Strips[0].Length.Millimeters >= less.Strips[0].Length.Millimeters - 0.001);
        Assert.True(larger.LayersEverywhere >= less.LayersEverywhere);
    }

    [Property]
    public void Two_flush_lengths_of_pipe_take_what_the_whole_takes_and_one_trim_more(SpiralCase given)
    {
        SpiralLay Of(double height) => new(Pipe(given.DiameterMm, height), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)));
        Strip one = Of(given.HeightMm).Strips[0];
        Strip two = Of(given.HeightMm / 3).Strips[0];
        Strip both = Of(given.HeightMm * 4 / 3).Strips[0];
        Near.Equal(one.Length.Millimeters + two.Length.Millimeters, both.Length.Millimeters + both.Trim.Millimeters, 0, absolute: 0.003);
        Near.Equal(one.Trim.Millimeters, both.Trim.Millimeters, 0, absolute: 0.002);
    }

    [Property]
    public void Every_micrometre_of_a_strip_is_cover_lap_or_trim(SpiralCase given)
    {
        foreach (SpiralEnds ends in new[] { SpiralEnds.TrimmedFlush, SpiralEnds.LevelTurns(given.LevelTurns) })
        {
            var lay = new SpiralLay(Pipe(given.DiameterMm, given.HeightMm), Stock(given.WidthMm), SpiralSetting.FromTrueLap(Mm(given.TrueLapMm)), ends);
            Assert.All(lay.Strips, static strip =>
            {
                Assert.Equal(strip.LengthUm, strip.CoverUm + strip.LapUm + strip.TrimUm);
                Assert.True(strip.CoverUm >= 0 && strip.LapUm >= 0 && strip.TrimUm >= 0, strip.ToString());
            });
        }
    }

    private static SpiralGeometry By(SpiralCase given, SpiralSetting setting) => new(Mm(given.DiameterMm), Mm(given.WidthMm), setting);
}
