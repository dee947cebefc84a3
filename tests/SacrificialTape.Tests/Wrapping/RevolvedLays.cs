using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Lays on heads, reducers and columns: strain against the curvature equation, limits, ledger, errors.</summary>
[Properties(Arbitrary = [typeof(RevolvedCases)], MaxTest = 80)]
public sealed class RevolvedLays
{
    [Property(MaxTest = 200)]
    public void What_covers_the_surface_in_each_of_two_passes_adds_up_to_its_area(RevolvedCase given)
    {
        foreach (ILay lay in All(given))
        {
            double covered = lay.Strips.Sum(static strip => strip.Cover.Millimeters * strip.Count) * given.WidthMm;
            double rounding = 0.000501 * given.WidthMm * lay.Strips.Sum(static strip => (double)strip.Count);
            Near.Equal(2 * lay.Surface.Area.SquareMeters * 1e6, covered, 1e-8, lay.Description, rounding);
            Assert.True(lay.LayersOnAverage.Ratio >= lay.LayersEverywhere * (1 - 1e-6), $"{given}: {lay.LayersOnAverage.Ratio} {lay}");
            Assert.All(lay.Strips, static strip => Assert.True(strip.Lap.Millimeters >= 0));
        }
    }

    [Property]
    public void More_lap_never_takes_fewer_metres(RevolvedCase given)
    {
        RevolvedCase more = given with { LapShare = given.LapShare + 0.2 };
        Assert.True(Metres(new GoreLay(more.Surface(), more.Strip(), Mm(more.LapMm))) >= Metres(new GoreLay(given.Surface(), given.Strip(), Mm(given.LapMm))) * (1 - 1e-9));
        var rings = new LatitudeRingLay(given.Surface(), given.Strip(), Mm(given.LapMm));
        var lapped = new LatitudeRingLay(more.Surface(), more.Strip(), Mm(more.LapMm));

        // On a closed head as many rings with more lap stand nearer to the crown, where they are shorter.
        Assert.True(lapped.Rings >= rings.Rings);
        Assert.True(given.Closes || Metres(lapped) >= Metres(rings) * (1 - 1e-9));
        Assert.True(Metres(new MeridianStripLay(more.Surface(), more.Strip(), Mm(more.LapMm), 0, null)) >= Metres(new MeridianStripLay(given.Surface(), given.Strip(), Mm(given.LapMm), 0, null)) * (1 - 1e-9));
    }

    [Property]
    public void Stopping_strips_never_takes_more_tape(RevolvedCase given)
    {
        var staged = new MeridianStripLay(given.Surface(), given.Strip(), Mm(given.LapMm));
        var whole = new MeridianStripLay(given.Surface(), given.Strip(), Mm(given.LapMm), 0, null);
        Assert.True(Metres(staged) <= Metres(whole) * (1 + 1e-9));
        Assert.Equal(staged.StripsRound, staged.Lengths.Sum(static one => one.Count));
    }

    [Property]
    public void Laps_are_never_less_than_asked_but_under_a_disc(RevolvedCase given)
    {
        double least = given.Closes ? Math.Min(given.LapMm, given.WidthMm / 4) : given.LapMm;
        foreach (RevolvedLay lay in All(given))
        {
            Assert.True(lay.Lap.Millimeters >= given.LapMm - (1e-9 * given.DiameterMm) || lay is LatitudeRingLay { Rings: 1 });
            Assert.True(lay.SmallestLap.Millimeters >= least - (1e-9 * given.DiameterMm) || lay is LatitudeRingLay { Rings: 1 });
        }
    }

    [Property(MaxTest = 40)]
    public void Pucker_beside_a_meridian_is_never_more_than_stated(RevolvedCase given)
    {
        // From many spots of the middle of a strip, square to it, along J'' = -K J on the shortest line itself.
        var lay = new MeridianStripLay(given.Surface(), given.Strip(), Mm(given.LapMm));
        var section = new RevolvedSection(given);
        double worst = 0;
        foreach (double share in new[] { 0.05, 0.2, 0.5, 0.8, 0.95, 0.9999 })
        {
            double radius = section.Small + ((section.Rim - section.Small) * share);
            worst = Math.Max(worst, 1 - Jacobi(section, radius, given.WidthMm / 2));
        }

        Assert.True(worst <= lay.Pucker.Fraction + 1e-6, $"{given}: {worst} against {lay.Pucker.Fraction}");
        if (given.Form is 0 or 1 or 3 or 5)
        {
            Assert.True(worst >= lay.Pucker.Fraction * 0.8, $"{given}: {worst} against {lay.Pucker.Fraction}");
        }

        if (given.Form is 4 or 6 or 7)
        {
            Assert.Equal(0, lay.Pucker.Fraction);
        }
    }

    [Theory]
    [InlineData(400, 50)]
    [InlineData(2000, 150)]
    [InlineData(600, 10)]
    public void A_sphere_in_closed_form(double diameter, double width)
    {
        HemisphericalHead head = HemisphericalHead.FromOutside(Mm(diameter), Mm(0));
        double r = diameter / 2;
        double pucker = 1 - Math.Cos(width / diameter);
        Near.Equal(pucker, new MeridianStripLay(head, Stock(width), Mm(2)).Pucker.Fraction, 1e-12);
        foreach (double flange in new[] { 0.0, 40 })
        {
            // The gore is as wide as the strip beside the rim, where the dish begins.
            Near.Equal(pucker, new GoreLay(HemisphericalHead.FromOutside(Mm(diameter), Mm(flange)), Stock(width), Mm(2)).Pucker.Fraction, 1e-3);
        }

        Near.Equal(width, GoreLay.WidestStrip(head, EdgeStrain.FromFraction(pucker))!.Value.Millimeters, 1e-9);

        // A ring whose middle lies at the colatitude c: sin(c -+ w / 2R) / sin(c).
        double c = 1.1;
        Length widest = LatitudeRingLay.WidestStrip(head, Mm(r * ((Math.PI / 2) - c)), EdgeStrain.FromFraction(0.02), EdgeStrain.FromFraction(0.02))!.Value;
        double half = widest.Millimeters / 2 / r;
        Near.Equal(0.02, Math.Max(1 - (Math.Sin(c - half) / Math.Sin(c)), (Math.Sin(c + half) / Math.Sin(c)) - 1), 1e-9);

        // Half a gore by the right triangle on the sphere: tan d = sin(c) tan(pi / n).
        var gores = new GoreLay(head, Stock(width), Mm(2));
        foreach (GoreStation station in gores.Stations)
        {
            double sine = Math.Cos(station.FromLowEdge.Millimeters / r);
            double needed = r * Math.Atan(sine * Math.Tan(Math.PI / gores.Gores));
            double given = station.HalfWidth.Millimeters - (gores.Lap.Millimeters / 2);
            Assert.True(given >= needed - 1e-9 && given <= needed * 1.02, $"{station}: {needed}");
        }
    }

    [Theory]
    [InlineData(500, 300, 400, 60)]
    [InlineData(219.1, 168.3, 152, 30)]
    public void A_cone_in_closed_form(double large, double small, double length, double width)
    {
        var cone = new ConcentricReducer(Mm(large), Mm(small), Mm(length));
        double slant = Math.Sqrt((length * length) + ((large - small) * (large - small) / 4));
        double sine = (large - small) / 2 / slant;
        var rings = new LatitudeRingLay(cone, Stock(width), Mm(5));
        double last = (small / 2) + (width * sine / 2);
        Near.Equal(width * sine / (2 * last), rings.Pucker.Fraction, 1e-9);
        Near.Equal(width * sine / (2 * last), rings.Stretch.Fraction, 1e-9);

        // The developed sector: half a gore is the height of a right triangle at its tip.
        var development = new ConeDevelopment(cone);
        Near.Equal(360 * sine, development.Angle.Degrees, 1e-12);
        Near.Equal(large / 2 / sine, development.OuterRadius.Millimeters, 1e-12);
        Near.Equal(slant, development.OuterRadius.Millimeters - development.InnerRadius.Millimeters, 1e-12);
        var gores = new GoreLay(cone, Stock(width), Mm(5));
        double angle = development.Angle.Radians / gores.Gores / 2;
        foreach (GoreStation station in gores.Stations)
        {
            double fromTip = development.OuterRadius.Millimeters - station.FromLowEdge.Millimeters;
            Near.Equal(fromTip * Math.Tan(angle), station.HalfWidth.Millimeters - (gores.Lap.Millimeters / 2), 1e-9);
        }

        Near.Equal(
            development.OuterRadius.Millimeters - (development.InnerRadius.Millimeters * Math.Cos(angle)),
            gores.Strips[0].Length.Millimeters, 0, absolute: 0.000501);
        Assert.Equal(0, gores.Pucker.Fraction);
        Assert.Null(GoreLay.WidestStrip(cone, EdgeStrain.FromFraction(0.01)));
        Assert.Null(MeridianStripLay.WidestStrip(cone, EdgeStrain.FromFraction(0.01)));
    }

    [Property(Arbitrary = [typeof(Cases)])]
    public void A_cone_with_equal_ends_is_a_pipe(SpanCase given)
    {
        double diameter = given.SpanMm;
        if (given.WidthMm > Math.PI * diameter / 4)
        {
            return;
        }

        var cylinder = new ConcentricReducer(Mm(diameter), Mm(diameter), Mm(5 * given.WidthMm));
        StraightPipe pipe = Pipe(diameter, 5 * given.WidthMm);
        var along = new AlongPipeLay(pipe, Stock(given.WidthMm), Mm(given.LapMm));
        foreach (RevolvedLay lay in new RevolvedLay[]
        {
            new GoreLay(cylinder, Stock(given.WidthMm), Mm(given.LapMm)),
            new MeridianStripLay(cylinder, Stock(given.WidthMm), Mm(given.LapMm)),
        })
        {
            Assert.Equal(along.LayersEverywhere, lay.LayersEverywhere);
            Near.Equal(along.Lap.Millimeters, lay.Lap.Millimeters, 1e-9, absolute: 1e-9 * diameter);
            Same(along.Strips.Single(), lay.Strips.Single());
        }

        var rings = new RingLay(pipe, Stock(given.WidthMm), Mm(given.LapMm));
        var round = new LatitudeRingLay(cylinder, Stock(given.WidthMm), Mm(given.LapMm));
        Assert.Equal(rings.LayersEverywhere, round.LayersEverywhere);
        Near.Equal(rings.Lap.Millimeters, round.Lap.Millimeters, 1e-9, absolute: 1e-9 * diameter);
        Same(rings.Strips.Single(), round.Strips.Single());
        Assert.Equal(0, round.Pucker.Fraction);
        Assert.Equal(0, round.Stretch.Fraction);
    }

    [Property]
    public void Heads_that_are_one_form_are_laid_alike(RevolvedCase given)
    {
        double d = given.DiameterMm;
        Head[] spheres =
        [
            HemisphericalHead.FromOutside(Mm(d), Mm(given.FlangeMm)),
            EllipsoidalHead.FromOutside(Mm(d), Mm(d / 2), Mm(given.FlangeMm)),
            EllipsoidalHead.FromInside(Mm(d - 20), Mm((d / 2) - 10), Mm(10), Mm(given.FlangeMm)),
            TorisphericalHead.FromOutside(Mm(d), Mm(d), Mm(d / 2), Mm(given.FlangeMm)),
        ];
        foreach (Func<Head, RevolvedLay> make in new Func<Head, RevolvedLay>[]
        {
            head => new GoreLay(head, given.Strip(), Mm(given.LapMm)),
            head => new MeridianStripLay(head, given.Strip(), Mm(given.LapMm)),
            head => new LatitudeRingLay(head, given.Strip(), Mm(given.LapMm)),
        })
        {
            RevolvedLay sphere = make(spheres[0]);
            foreach (Head head in spheres.Skip(1))
            {
                RevolvedLay other = make(head);
                Assert.Equal(sphere.Strips.Count, other.Strips.Count);
                Near.Equal(sphere.Lap.Millimeters, other.Lap.Millimeters, 1e-6, absolute: 1e-3);
                Near.Equal(sphere.Pucker.Fraction, other.Pucker.Fraction, 1e-6);
                Near.Equal(Metres(sphere), Metres(other), 1e-7);
            }
        }
    }

    [Property]
    public void The_widest_strip_keeps_within_the_limit(RevolvedCase given)
    {
        EdgeStrain limit = EdgeStrain.FromFraction(0.01);
        if (GoreLay.WidestStrip(given.Surface(), limit) is not { } widest || widest.Millimeters < 5 || widest.Millimeters > 0.3 * given.DiameterMm)
        {
            return;
        }

        StripStock stock = Stock(Math.Floor(widest.Millimeters * 100) / 100);
        Assert.True(new GoreLay(given.Surface(), stock, Mm(1)).Pucker.Fraction <= 0.01 * (1 + 1e-9));
        double strips = new MeridianStripLay(given.Surface(), stock, Mm(1)).Pucker.Fraction;
        Assert.True(strips <= 0.01 * (1 + 1e-9) && strips > 0.0098);
    }

    [Fact]
    public void Rules_speak_of_lap_pucker_and_stretch()
    {
        HemisphericalHead head = HemisphericalHead.FromOutside(Mm(500), Mm(0));
        Assert.Contains(RuleIds.MaximumPucker, Said(new GoreLay(head, Stock(100), Mm(15))));
        Assert.Contains(RuleIds.MaximumPucker, Said(new MeridianStripLay(head, Stock(100), Mm(15))));
        Assert.Contains(RuleIds.MinimumEndLap, Said(new MeridianStripLay(head, Stock(30), Mm(15), choices: Choices(0, 5))));
        string[] rings = Said(new LatitudeRingLay(head, Stock(100), Mm(5), Choices(0, 5)));
        Assert.Equal([RuleIds.MinimumLap, RuleIds.MinimumEndLap, RuleIds.MaximumPucker, RuleIds.MaximumStretch], rings);
        Assert.Empty(Said(new GoreLay(new ConcentricReducer(Mm(500), Mm(300), Mm(400)), Stock(100), Mm(15))));
    }

    [Fact]
    public void The_crew_is_told_of_tips_corners_and_the_disc()
    {
        string cone = new GoreLay(ConicalHead.FromOutside(Mm(500), Mm(200), Mm(50)), Stock(60), Mm(10)).Instruction;
        Assert.Contains("slit to its centre", cone, StringComparison.Ordinal);
        Assert.Contains("Snip the edges", cone, StringComparison.Ordinal);
        string sphere = new GoreLay(HemisphericalHead.FromOutside(Mm(500), Mm(50)), Stock(60), Mm(10)).Instruction;
        Assert.DoesNotContain("slit", sphere, StringComparison.Ordinal);
        Assert.DoesNotContain("Snip", sphere, StringComparison.Ordinal);
        Assert.Contains("last when the crown faces up, first when it faces down", sphere, StringComparison.Ordinal);
        Assert.Contains("Trim both ends", new GoreLay(new ConcentricReducer(Mm(500), Mm(300), Mm(400)), Stock(60), Mm(10)).Instruction, StringComparison.Ordinal);
    }

    [Fact]
    public void Wrong_surfaces_and_numbers() => Assert.Multiple(
        static () => Assert.Contains("circular panel", Assert.Throws<ArgumentException>(static () => new GoreLay(FlatHead.FromOutside(Mm(500), Mm(0)), Stock(), Mm(10))).Message, StringComparison.Ordinal),
        static () => Assert.Contains("base plate", Assert.Throws<ArgumentException>(static () => new LatitudeRingLay(
            new TaperedColumn(Mm(200), Mm(100), Mm(4000), new BasePlate(Mm(400), Mm(400), Mm(20), 0, Mm(0))), Stock(), Mm(10))).Message, StringComparison.Ordinal),
        static () => Assert.Contains("not laid on by meridians", Assert.Throws<ArgumentException>(static () => new MeridianStripLay(Pipe(), Stock(), Mm(10))).Message, StringComparison.Ordinal),
        static () => Errors.Refused(static () => new GoreLay(HemisphericalHead.FromOutside(Mm(60), Mm(0)), Stock(100), Mm(10)), "stock", "100 mm is outside", "the disc that closes the crown"),
        static () => Errors.Refused(static () => new GoreLay(HemisphericalHead.FromOutside(Mm(600), Mm(0)), Stock(100), Mm(100)), "leastLap", "less than the strip is wide"),
        static () => Errors.Refused(static () => new MeridianStripLay(HemisphericalHead.FromOutside(Mm(600), Mm(0)), Stock(100), Mm(10), 9, null), "stages", "at least 0 and at most 3 stages"),
        static () => Errors.Refused(static () => new LatitudeRingLay(new TaperedColumn(Mm(600), Mm(500), Length.FromMeters(1000)), Stock(20), Mm(15)), "leastLap", "more than the 100000"),
        static () => Errors.Refused(static () => LatitudeRingLay.WidestStrip(HemisphericalHead.FromOutside(Mm(600), Mm(0)), Mm(600), EdgeStrain.FromFraction(0.01), EdgeStrain.FromFraction(0.01)), "fromLowEdge", "along the meridian"),
        static () => Errors.Refused(static () => new ConeDevelopment(new ConcentricReducer(Mm(600), Mm(600), Mm(300))), "reducer", "rectangle"));

    private static IEnumerable<RevolvedLay> All(RevolvedCase given) =>
    [
        new GoreLay(given.Surface(), given.Strip(), Mm(given.LapMm), Choices(0, 10, 2)),
        new MeridianStripLay(given.Surface(), given.Strip(), Mm(given.LapMm), choices: Choices(0, 10, 2)),
        new MeridianStripLay(given.Surface(), given.Strip(), Mm(given.LapMm), 0, Choices(0, 10, 2)),
        new LatitudeRingLay(given.Surface(), given.Strip(), Mm(given.LapMm), Choices(0, 10, 2)),
    ];

    private static string[] Said(ILay lay) => [.. lay.Judge(RuleSet.Default, "H-1").Select(static finding => finding.Rule.Id)];

    private static double Metres(ILay lay) => lay.Strips.Sum(static strip => strip.TotalLength.Meters);

    private static void Same(Strip one, Strip other)
    {
        Assert.Equal(one.Count, other.Count);
        Near.Equal(one.LengthUm, other.LengthUm, 0, absolute: 1);
        Near.Equal(one.CoverUm, other.CoverUm, 0, absolute: 1);
        Near.Equal(one.TrimUm, other.TrimUm, 0, absolute: 1);
    }

    // The shortest line that leaves a meridian square: q'' = m r0^2 / r^3 for the distance q from the crown, r' = m q'.
    private static double Jacobi(RevolvedSection section, double start, double distance)
    {
        const int Steps = 4000;
        double h = distance / Steps;
        double radius = start;
        double speed = section.SlopeAt(radius) / radius * h / 2;
        double j = 1;
        double rate = -section.CurvatureAt(radius) * h / 2;
        for (int i = 0; i < Steps && radius < section.Rim * (1 - 1e-6); i++)
        {
            radius += section.SlopeAt(radius) * speed * h;
            j += rate * h;
            if (radius < section.Rim * (1 - 1e-6))
            {
                speed += section.SlopeAt(radius) * start * start / (radius * radius * radius) * h;
                rate -= section.CurvatureAt(radius) * j * h;
            }
        }

        return j;
    }
}
