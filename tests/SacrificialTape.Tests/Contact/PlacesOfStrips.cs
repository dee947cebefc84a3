using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Contact;

/// <summary>The places that lays give their strips.</summary>
[Properties(MaxTest = 60)]
public sealed class PlacesOfStrips
{
    [Property]
    public void Every_point_lies_under_every_pass(int seed)
    {
        var random = new Random(seed);
        ILay lay = SomeLay(random, random.Next(8));
        Assert.True(UnrolledSurface.TryUnroll(lay.Surface, out UnrolledSurface? surface));
        ValueList<PlacedStrip> strips = ((IPlacedStrips)lay).PlaceStrips();
        Assert.Equal(Enumerable.Range(1, strips.Count), strips.Select(static strip => strip.Number));
        int passes = strips.Max(static strip => strip.Pass);
        for (int i = 0; i < 200; i++)
        {
            double x = random.NextDouble() * surface.Length.Millimeters;
            double y = random.NextDouble() * surface.Girth.Millimeters;
            for (int pass = 1; pass <= passes; pass++)
            {
                Assert.True(strips.Any(strip => strip.Pass == pass && Covers(strip, surface, x, y)), $"{lay.Description}: nothing at {x}, {y} in pass {pass}");
            }
        }
    }

    [Property]
    public void There_are_as_many_as_strips_to_cut_and_as_long(int seed)
    {
        var random = new Random(seed);
        ILay lay = SomeLay(random, random.Next(6));
        ValueList<PlacedStrip> strips = ((IPlacedStrips)lay).PlaceStrips();
        Assert.Equal(lay.Strips.Sum(static strip => strip.Count), strips.Count);
        Near.Equal(
            lay.Strips.Sum(static strip => strip.TotalLength.Millimeters),
            strips.Sum(static strip => (strip.RunsAround ? strip.ExtentAround : strip.ExtentAlong).Millimeters),
            1e-9,
            absolute: 0.001 * strips.Count);
    }

    [Property]
    public void A_spiral_is_as_long_as_its_strip_but_for_its_slanted_ends(int seed)
    {
        var random = new Random(seed);
        var lay = (SpiralLay)SomeLay(random, 6);
        PlacedStrip strip = lay.PlaceStrips()[0];
        double length = double.Hypot(strip.ExtentAround.Millimeters, strip.Lean.Millimeters);
        Near.Equal(lay.Strips[0].Length.Millimeters, length, 0, absolute: 0.001 + (2 * 100 * Math.Tan(lay.Geometry.Angle.Radians)));
    }

    private static ILay SomeLay(Random random, int kind)
    {
        StraightPipe pipe = Pipe(60 + random.Next(500), 1000 + random.Next(3000));
        LayChoices choices = Choices(0, 10 + random.Next(20), 1 + random.Next(2));
        Length lap = Mm(5 + random.Next(60));
        var shell = new Shell(Mm(600 + random.Next(2000)), Mm(500 + random.Next(3000)), ShellAxis.Upright);
        var panel = new RectangularPanel(Mm(300 + random.Next(2000)), Mm(300 + random.Next(2000)));
        return kind switch
        {
            0 => new RingLay(pipe, Stock(), lap, choices),
            1 => new AlongPipeLay(pipe, Stock(), lap, choices),
            2 => new PanelLay(panel, Stock(), random.Next(2) == 0 ? PanelDirection.AlongWidth : PanelDirection.AlongHeight, lap, choices),
            3 => new ShellLay(shell, Stock(), ShellDirection.Round, lap, Mm(random.Next(30)), choices),
            4 => new ShellLay(shell, Stock(), ShellDirection.AlongAxis, lap, Mm(random.Next(30)), choices),
            5 => new BendRingLay(new Bend(Mm(219.1), Mm(305 + random.Next(300)), Angle.FromDegrees(20 + random.Next(160))), Stock(50), Mm(random.Next(30)), choices),
            6 => new SpiralLay(pipe, Stock(), SpiralSetting.FromTrueLap(lap), null, choices),
            _ => new SpiralLay(pipe, Stock(), SpiralSetting.FromTrueLap(lap), SpiralEnds.LevelTurns(1 + random.Next(2)), choices),
        };
    }

    private static bool Covers(PlacedStrip strip, UnrolledSurface surface, double x, double y)
    {
        double girth = surface.Girth.Millimeters;
        double from = strip.FromAround.Millimeters;
        double around = strip.ExtentAround.Millimeters;
        double slope = strip.Lean.Millimeters / around;
        int turns = surface.IsClosed ? (int)(around / girth) + 2 : 0;
        for (int turn = -1; turn <= turns; turn++)
        {
            double up = y + (surface.IsClosed ? turn * girth : 0) - from;
            double off = x - strip.FromAlong.Millimeters - (slope * up);
            if (up >= -1e-9 && up <= around + 1e-9 && off >= -1e-9 && off <= strip.ExtentAlong.Millimeters + 1e-9)
            {
                return true;
            }
        }

        return false;
    }
}
