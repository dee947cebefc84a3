using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Spirals on bends: cover counted with lengths on the torus, path and strain worked out numerically.</summary>
[Properties(Arbitrary = [typeof(FittingLayCases)], MaxTest = 100)]
public sealed class BendSpirals
{
    [Property(MaxTest = 30)]
    public void Every_spot_lies_under_as_many_turns_as_promised_even_when_the_hand_wanders(BendSpiralCase given, byte seed)
    {
        foreach (double wander in new[] { 0.0, given.WidthMm * (seed % 20) / 100 })
        {
            BendSpiralLay lay = given.Lay(Choices(wander));
            int least = Least(given, lay.OutsideAdvance.Millimeters, wander, seed);
            Assert.True(least >= lay.LayersEverywhere, $"{least} turns where {lay.LayersEverywhere} were promised.");
            if (wander == 0)
            {
                // On the outside the bend is as the cylinder that touches it, but for the curvature within a strip's width.
                Assert.True(lay.LayersEverywhere >= 1);
                Assert.True(least <= Math.Floor(given.WidthMm / (0.9 * (given.WidthMm - lay.OutsideLap.Millimeters))));
            }
        }
    }

    [Fact]
    public void The_count_sees_a_gap() =>
        Assert.Equal(0, Least(new BendSpiralCase(168.3, 229, 90, 40, 10), 42, 0, 3));

    [Property]
    public void Turns_are_whole_and_the_lap_no_less_than_asked(BendSpiralCase given)
    {
        BendSpiralLay lay = given.Lay(Choices());
        Near.Equal(given.Bend().OutsideArc.Millimeters, lay.Turns * lay.OutsideAdvance.Millimeters, 1e-12);
        Assert.True(lay.OutsideLap.Millimeters >= given.LapMm - 1e-9);
        Assert.True(lay.InsideLap >= lay.OutsideLap);
        var straight = new SpiralGeometry(Mm(given.DiameterMm), Mm(given.WidthMm), lay.SettingOnStraight);
        Near.Equal(straight.TrueLap.Millimeters, lay.OutsideLap.Millimeters, 1e-9, absolute: 1e-9);
        Near.Equal(straight.Angle.Degrees, lay.OutsideAngle.Degrees, 1e-12);
        if (lay.Turns > 1)
        {
            // One turn fewer would lap less than asked.
            double wider = given.Bend().OutsideArc.Millimeters / (lay.Turns - 1);
            double c = Math.PI * given.DiameterMm;
            Assert.True(given.WidthMm - (wider * c / Math.Sqrt((c * c) + (wider * wider))) < given.LapMm + 1e-9);
        }
    }

    [Property(MaxTest = 40)]
    public void The_strip_is_as_long_as_its_middle_line_in_space(BendSpiralCase given)
    {
        BendSpiralLay lay = given.Lay(Choices());
        double ratio = given.Degrees * Math.PI / 180 / (2 * Math.PI * lay.Turns);
        const int Chords = 4000;
        double turn = 0;
        for (int i = 0; i < Chords; i++)
        {
            turn += Distance(InSpace(given, i * 2 * Math.PI / Chords, ratio * i * 2 * Math.PI / Chords), InSpace(given, (i + 1) * 2 * Math.PI / Chords, ratio * (i + 1) * 2 * Math.PI / Chords));
        }

        Near.Equal(turn * lay.Turns, lay.Strips[0].Length.Millimeters, 1e-6);
    }

    [Property(MaxTest = 40)]
    public void Sideways_curvature_of_the_path_is_that_of_the_curve_in_space(BendSpiralCase given, byte at)
    {
        double t = at * Math.PI / 255;
        BendSpiralLay lay = given.Lay(Choices());
        double ratio = given.Degrees * Math.PI / 180 / (2 * Math.PI * lay.Turns);
        const double H = 1e-3;
        double[] here = InSpace(given, t, ratio * t);
        double[] before = InSpace(given, t - H, ratio * (t - H));
        double[] after = InSpace(given, t + H, ratio * (t + H));
        double[] speed = [.. here.Select((_, i) => (after[i] - before[i]) / (2 * H))];
        double[] bent = [.. here.Select((x, i) => (after[i] - (2 * x) + before[i]) / (H * H))];
        double[] normal = [Math.Cos(t) * Math.Cos(ratio * t), Math.Cos(t) * Math.Sin(ratio * t), Math.Sin(t)];
        double[] side = [(normal[1] * speed[2]) - (normal[2] * speed[1]), (normal[2] * speed[0]) - (normal[0] * speed[2]), (normal[0] * speed[1]) - (normal[1] * speed[0])];
        double length = Math.Sqrt(speed.Sum(static x => x * x));
        double curvature = Math.Abs(side.Zip(bent).Sum(static x => x.First * x.Second)) / (length * length * length);
        double shown = BendSpiralKernel.SidewaysStrain(2, ratio, t * 180 / Math.PI, given.DiameterMm / 2, given.RadiusMm, default(NoSteps));
        Near.Equal(curvature, shown, 1e-4, absolute: 1e-6 / given.DiameterMm);
    }

    [Property(MaxTest = 40)]
    public void Lines_beside_the_path_are_longer_or_shorter_as_stated(BendSpiralCase given, byte at)
    {
        double t = (at - 128) * Math.PI / 128;
        BendSpiralLay lay = given.Lay(Choices());
        double ratio = given.Degrees * Math.PI / 180 / (2 * Math.PI * lay.Turns);
        double tube = given.DiameterMm / 2;
        double away = Math.Min(tube, given.RadiusMm - tube) / 20;
        double ahead = Beside(given, ratio, t, away);
        double behind = Beside(given, ratio, t, -away);
        double sideways = BendSpiralKernel.SidewaysStrain(2 * away, ratio, Math.Abs(t) * 180 / Math.PI, tube, given.RadiusMm, default(NoSteps));
        double surface = BendSpiralKernel.SurfaceStrain(2 * away, Math.Abs(t) * 180 / Math.PI, tube, given.RadiusMm, default(NoSteps));
        Near.Equal(sideways, Math.Abs(ahead - behind) / 2, 0.02, absolute: 3e-5);
        Near.Equal(surface, ((ahead + behind) / 2) - 1, 0.05, absolute: 3e-5);
    }

    [Property(MaxTest = 40)]
    public void No_edge_is_strained_more_than_stated(BendSpiralCase given)
    {
        BendSpiralLay lay = given.Lay(Choices());
        double ratio = given.Degrees * Math.PI / 180 / (2 * Math.PI * lay.Turns);
        for (int i = 0; i <= 1000; i++)
        {
            double sideways = BendSpiralKernel.SidewaysStrain(given.WidthMm, ratio, i * 0.18, given.DiameterMm / 2, given.RadiusMm, default(NoSteps));
            double surface = BendSpiralKernel.SurfaceStrain(given.WidthMm, i * 0.18, given.DiameterMm / 2, given.RadiusMm, default(NoSteps));
            Assert.True(sideways - surface <= lay.Pucker.Fraction + 1e-9);
            Assert.True(sideways + surface <= lay.Stretch.Fraction + 1e-9);
        }

        // A ring on the same bend lacks the sideways part.
        var rings = new BendRingLay(given.Bend(), Stock(given.WidthMm), Mm(given.LapMm), Choices());
        Assert.True(lay.Pucker.Fraction >= rings.Pucker.Fraction - 1e-12);
        Assert.True(lay.Stretch.Fraction >= rings.Stretch.Fraction - 1e-12);
    }

    [Property]
    public void Tape_is_cover_and_lap_and_more_lap_takes_no_less(BendSpiralCase given)
    {
        Strip strip = given.Lay(Choices()).Strips.Single();
        Assert.Equal(strip.LengthUm, strip.CoverUm + strip.LapUm);
        Near.Equal(given.Bend().Area.SquareMeters * 1e6 / given.WidthMm, strip.Cover.Millimeters, 1e-9, absolute: 0.000501);
        BendSpiralLay more = (given with { LapMm = (given.LapMm + given.WidthMm) / 2 }).Lay(Choices());
        Assert.True(more.Strips[0].Length.Millimeters >= strip.Length.Millimeters - 0.001);
        Assert.True(more.LayersOnAverage.Ratio >= more.LayersEverywhere * (1 - 1e-9));
    }

    [Fact]
    public void A_bend_of_a_very_large_radius_takes_the_strip_of_the_straight_pipe()
    {
        const double Radius = 9e7;
        double advance = new SpiralGeometry(Mm(168.3), Mm(50), SpiralSetting.FromTrueLap(Mm(10))).Advance.Millimeters;
        double degrees = 12 * advance / (Radius + 84.15) * 180 / Math.PI;
        var lay = new BendSpiralLay(new Bend(Mm(168.3), Mm(Radius), Angle.FromDegrees(degrees)), Stock(50), Mm(10), Choices());
        Assert.Equal(12, lay.Turns);
        double sine = 40 / (Math.PI * 168.3);
        Near.Equal(12 * advance / sine, lay.Strips[0].Length.Millimeters, 1e-5);
        Near.Equal(lay.OutsideLap.Millimeters, lay.InsideLap.Millimeters, 1e-4);
        Assert.True(lay.Pucker.Fraction < 1e-4 && lay.Stretch.Fraction < 1e-4);
    }

    [Fact]
    public void Where_it_is_not_possible_the_error_names_rings() => Assert.Multiple(
        static () => Errors.Refused(static () => new BendSpiralLay(new Bend(Mm(168.3), Mm(229), Angle.FromDegrees(5)), Stock(50), Mm(10)), "bend", "fewer than one turn", "Take rings"),
        static () => Errors.Refused(static () => new BendSpiralLay(new Bend(Mm(60.3), Mm(35), Angle.FromDegrees(360)), Stock(100), Mm(60)), "stock", "fold", "Take rings"),
        static () => Errors.Refused(static () => new BendSpiralLay(new Bend(Mm(21.3), Mm(38), Angle.FromDegrees(90)), Stock(100), Mm(10)), "leastLap", "take rings"),
        static () => Errors.Refused(static () => new BendSpiralLay(new Bend(Mm(168.3), Mm(229), Angle.FromDegrees(90)), Stock(50), Mm(50)), "leastLap"));

    [Fact]
    public void A_strip_too_wide_for_the_bend_is_told_to_be_rings()
    {
        var elbow = Bend.LongRadius(PipeSize.FromNps("6"), Angle.FromDegrees(90));
        string[] wide = [.. new BendSpiralLay(elbow, Stock(50), Mm(10)).Judge(RuleSet.Default, "B").Select(static one => one.Rule.Id)];
        Assert.Contains(RuleIds.MaximumPucker, wide);
        Assert.Contains(RuleIds.RingsInstead, wide);
        var gentle = new Bend(Mm(168.3), Mm(3000), Angle.FromDegrees(90));
        Assert.Empty(new BendSpiralLay(gentle, Stock(50), Mm(12)).Judge(RuleSet.Default, "B"));
    }

    private static double[] InSpace(BendSpiralCase given, double t, double phi)
    {
        double f = given.RadiusMm + (given.DiameterMm / 2 * Math.Cos(t));
        return [f * Math.Cos(phi), f * Math.Sin(phi), given.DiameterMm / 2 * Math.Sin(t)];
    }

    private static double Distance(double[] a, double[] b) => Math.Sqrt(a.Zip(b).Sum(static x => (x.First - x.Second) * (x.First - x.Second)));

    // Length of the line a distance beside the path for each unit of the path: shortest lines sent off square to the path
    // from two neighbouring points of it, and the chord between their ends.
    private static double Beside(BendSpiralCase given, double ratio, double t, double away)
    {
        const double H = 1e-4;
        double speed = Math.Sqrt(Math.Pow(given.DiameterMm / 2, 2) + Math.Pow(ratio * (given.RadiusMm + (given.DiameterMm / 2 * Math.Cos(t))), 2));
        return Distance(End(t - H), End(t + H)) / (2 * H * speed);

        double[] End(double from)
        {
            double r = given.DiameterMm / 2;
            double f = given.RadiusMm + (r * Math.Cos(from));
            double v = Math.Sqrt((r * r) + (ratio * ratio * f * f));
            double[] state = [from, ratio * from, -ratio * f / (v * r), r / (v * f)];
            const int Steps = 40;
            double h = away / Steps;
            for (int i = 0; i < Steps; i++)
            {
                double[] a = Rate(state);
                double[] b = Rate(Moved(state, a, h / 2));
                double[] c = Rate(Moved(state, b, h / 2));
                double[] d = Rate(Moved(state, c, h));
                state = [.. state.Select((x, j) => x + (h / 6 * (a[j] + (2 * b[j]) + (2 * c[j]) + d[j])))];
            }

            return InSpace(given, state[0], state[1]);
        }

        // Geodesics: t'' = f f' phi'^2 / r^2, phi'' = -2 (f' / f) t' phi' with f' = -r sin t.
        double[] Rate(double[] s)
        {
            double r = given.DiameterMm / 2;
            double f = given.RadiusMm + (r * Math.Cos(s[0]));
            double slope = -r * Math.Sin(s[0]);
            return [s[2], s[3], f * slope * s[3] * s[3] / (r * r), -2 * slope / f * s[2] * s[3]];
        }

        static double[] Moved(double[] s, double[] rate, double by) => [.. s.Select((x, j) => x + (rate[j] * by))];
    }

    // Turns over the barest of many spots. The tube is cut open along the outside and laid on, turn after turn: a spot shows
    // once for each. The distance to the middle line is never more than along a straight line of the coordinates, whose
    // length is summed on the torus, and on the touching pipe beyond the tangents.
    private static int Least(BendSpiralCase given, double advance, double wander, int seed)
    {
        double tube = given.DiameterMm / 2;
        double whole = given.Degrees * Math.PI / 180;
        double ratio = advance / (2 * Math.PI * (given.RadiusMm + tube));
        var random = new Random(seed);
        int least = int.MaxValue;
        for (int spot = 0; spot < 90; spot++)
        {
            double t = spot % 3 == 0 ? 0 : spot % 7 == 0 ? Math.PI : random.NextDouble() * 2 * Math.PI;
            double phi = (spot % 5) switch { 0 => 0, 1 => whole, _ => random.NextDouble() * whole };
            int over = 0;
            double middle = ((phi / ratio) - t) / (2 * Math.PI);
            double reach = Math.Min(12, 2 + (given.WidthMm / advance * (given.RadiusMm + tube) / (given.RadiusMm - tube)));
            for (int k = (int)Math.Floor(middle - reach); k <= (int)Math.Ceiling(middle + reach); k++)
            {
                double at = t + (2 * Math.PI * k);
                double side = phi - (ratio * at);
                double shift = (k & 1) == 0 ? 0 : wander;
                double allowed = (given.WidthMm / 2) + (side > 0 ? shift : -shift);
                over += Nearest(at, phi) <= allowed + 1e-6 ? 1 : 0;
            }

            least = Math.Min(least, over);
        }

        return least;

        double Nearest(double t, double phi)
        {
            double low = t - (given.WidthMm / tube);
            double high = t + (given.WidthMm / tube);
            for (int i = 0; i < 40; i++)
            {
                double third = (high - low) / 3;
                if (Way(t, phi, low + third) < Way(t, phi, high - third))
                {
                    high -= third;
                }
                else
                {
                    low += third;
                }
            }

            return Way(t, phi, (low + high) / 2);
        }

        double Way(double t, double phi, double s)
        {
            const int Parts = 8;
            double sum = 0;
            for (int i = 0; i < Parts; i++)
            {
                double part = (i + 0.5) / Parts;
                double bend = phi + (((ratio * s) - phi) * part);
                double round = t + ((s - t) * part);
                double f = given.RadiusMm + (tube * (bend < 0 || bend > whole ? 1 : Math.Cos(round)));
                sum += Math.Sqrt(Math.Pow(tube * (s - t), 2) + Math.Pow(f * ((ratio * s) - phi), 2)) / Parts;
            }

            return sum;
        }
    }
}
