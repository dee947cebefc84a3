using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Lays on heads, cones, tees and gentle bends, counted strip by strip and measured in ways of their own.</summary>
internal static class HeadAndBendLayChecks
{
    private const double Rim = 500;

    internal static CheckGroup Group => new(
        "Lays on heads, cones, tees and bends",
        "No printed worked example was found. Strips are set down one by one until the way is closed; widths come from great circles on the sphere and from the unrolled sector of the cone, lengths from chords in space. None of it uses the library's formulas.",
        [.. Heads(), .. Cones(), .. Others()]);

    private static IEnumerable<PublishedCase> Heads()
    {
        var head = HemisphericalHead.FromOutside(Length.FromMillimeters(2 * Rim), Length.FromMillimeters(40));
        GoreLay Gores(double width, double lap) => new(head, Ask.Stock(width), Length.FromMillimeters(lap), Ask.Exact);
        foreach ((double width, double lap) in new[] { (100.0, 10.0), (50.0, 12.0), (150.0, 15.0) })
        {
            int round = StepRound(2 * Math.PI * Rim, width, lap);
            yield return Case(FormattableString.Invariant($"gores-w{width}"), FormattableString.Invariant($"gores {width} mm wide, lap {lap} mm, on a hemispherical head of 1000 mm"), round, 0, "gores",
                "gore after gore round the rim, where it is widest", () => Gores(width, lap).Gores);

            // On the rim the meridians of two neighbours are a great circle's arc apart; the cut stations lose up to 0.1 mm each.
            double half = Rim * Math.Atan(Math.Tan(Math.PI / round));
            yield return Case(FormattableString.Invariant($"gores-lap-w{width}"), FormattableString.Invariant($"lap of such gores {width} mm wide"), width - (2 * half), 0.2, "mm",
                "width less twice the arc of a great circle from the middle of a gore to its edge, R atan(sin c tan(pi/n)) at c = 90 degrees", () => Gores(width, lap).Lap.Millimeters);
            yield return Case(FormattableString.Invariant($"gores-pucker-w{width}"), FormattableString.Invariant($"pucker of such gores {width} mm wide"), 100 * (1 - (Rim * Math.Cos(width / 2 / Rim) / Rim)), 1e-9, "%",
                "the edge is a small circle of the radius R cos(w/2R), the middle a great one", () => 100 * Gores(width, lap).Pucker.Fraction);
            yield return Case(FormattableString.Invariant($"meridians-w{width}"), FormattableString.Invariant($"whole strips {width} mm wide there, all of one length"), round, 0, "strips",
                "strip after strip round the rim", () => new MeridianStripLay(head, Ask.Stock(width), Length.FromMillimeters(lap), 0, Ask.Exact).StripsRound);
            yield return Case(FormattableString.Invariant($"meridians-halved-w{width}"), "the same where every second one stops short", round + (round % 2), 0, "strips",
                "an even number, or one strip would have two neighbours that stop", () => new MeridianStripLay(head, Ask.Stock(width), Length.FromMillimeters(lap), 1, Ask.Exact).StripsRound);
        }

        yield return Case("flat-head", "strips 100 mm wide, lap 12 mm, over a flat head of 1000 mm", StepAcross(2 * Rim, 100, 12), 0, "strips", "strip after strip across the disc", static () =>
            new FlatHeadLay(FlatHead.FromOutside(Length.FromMillimeters(1000), Length.Zero), Ask.Stock(100), Length.FromMillimeters(12), Ask.Exact).FaceStrips);
    }

    private static IEnumerable<PublishedCase> Cones()
    {
        var cone = new ConcentricReducer(Length.FromMillimeters(323.9), Length.FromMillimeters(219.1), Length.FromMillimeters(203));
        double slant = Math.Sqrt((203 * 203.0) + (52.4 * 52.4));
        double outer = slant * 323.9 / (323.9 - 219.1);
        double sector = Math.PI * 323.9 / outer;

        // The least number whose triangles of the unrolled sector, with a lap, fit the strip at the large end.
        int gores = 3;
        while ((2 * outer * Math.Tan(sector / gores / 2)) + 10 > 50)
        {
            gores++;
        }

        yield return Case("cone-gores", "gores 50 mm wide, lap 10 mm, on a reducer 323.9 to 219.1 mm", gores, 0, "gores", "the unrolled sector parted into equal triangles", () =>
            new GoreLay(cone, Ask.Stock(50), Length.FromMillimeters(10), Ask.Exact).Gores);
        LatitudeRingLay Rings() => new(cone, Ask.Stock(50), Length.FromMillimeters(10), Ask.Exact);
        yield return Case("cone-rings", "rings 50 mm wide, lap 10 mm, up its slant", StepAcross(slant, 50, 10), 0, "rings", "ring after ring along the slant", () => Rings().Rings);

        // The ring at the small end: its upper edge is the small end itself.
        double middle = 219.1 + (2 * 25 * 52.4 / slant);
        yield return Case("cone-ring-pucker", "pucker of the ring at the small end", 100 * (1 - (219.1 / middle)), 1e-6, "%", "circle of its upper edge against that of its middle", () => 100 * Rings().Pucker.Fraction);
    }

    private static IEnumerable<PublishedCase> Others()
    {
        yield return Case("tee-run", "rings 100 mm wide, lap 10 mm, on a run of 1600 mm", StepAcross(1600, 100, 10), 0, "rings", "ring after ring along the run", static () =>
            new TeeLay(new Tee(Length.FromMillimeters(1000), Length.FromMillimeters(10), Length.FromMillimeters(800), Length.FromMillimeters(600)), Ask.Stock(100), Length.FromMillimeters(10), Length.FromMillimeters(5), Ask.Exact).RunRings);
        yield return Case("eccentric", "strips 50 mm wide, lap 10 mm, along an eccentric reducer 168.3 to 114.3 mm", StepRound(Math.PI * 168.3, 50, 10), 0, "strips", "strip after strip round the large end", static () =>
            new EccentricReducerLay(new EccentricReducer(Length.FromMillimeters(168.3), Length.FromMillimeters(114.3), Length.FromMillimeters(140)), Ask.Stock(50), Length.FromMillimeters(10), Ask.Exact).StripsRound);
        var mitred = new MitredBend(Length.FromMillimeters(100), Length.FromMillimeters(300), Angle.FromDegrees(90), 3);
        yield return Case("mitred-outside", "outside of a piece of a bend with three mitres, R 300, D 100", 2 * 350 * (2 - Math.Sqrt(3)), 1e-9, "mm", "tan 15 degrees is 2 less the root of 3", () => mitred.PieceOutside.Millimeters);
        yield return Case("mitred-inside", "inside of such a piece", 2 * 250 * (2 - Math.Sqrt(3)), 1e-9, "mm", "tan 15 degrees is 2 less the root of 3", () => mitred.PieceInside.Millimeters);
        BendSpiralLay Spiral() => new(
            new Bend(Length.FromMillimeters(60.3), Length.FromMillimeters(1000), Angle.FromDegrees(60)), Ask.Stock(40), Length.FromMillimeters(10), Ask.Exact);
        const int Turns = 36;
        yield return Case("spiral-turns", "turns 40 mm wide, lap 10 mm, round a bend of 60 degrees, D 60.3, R 1000", Turns, 0, "turns",
            "1030.15 x pi/3 = 1078.8 mm outside over 30/cos(atan(30.4/189.4)) = 30.4 mm a turn, 35.5", () => Spiral().Turns);
        yield return Case("spiral-length", "length of that strip", Chords(30.15, 1000, Math.PI / 3, Turns), 0.01, "mm", "72 000 chords of the path in space", () => Spiral().Strips[0].Length.Millimeters);
    }

    // Round a closed way: each strip takes the one before by a lap, the last also the first.
    private static int StepRound(double way, double width, double lap)
    {
        int strips = 0;
        double reached = 0;
        while (reached < way)
        {
            reached += width - lap;
            strips++;
        }

        return strips;
    }

    // Over an open way: the first begins at its edge, each takes the one before by a lap.
    private static int StepAcross(double way, double width, double lap)
    {
        int strips = 1;
        double reached = width;
        while (reached < way)
        {
            reached += width - lap;
            strips++;
        }

        return strips;
    }

    private static double Chords(double tube, double bend, double angle, int turns)
    {
        const int EachTurn = 2000;
        double length = 0;
        (double X, double Y, double Z) before = At(0);
        for (int i = 1; i <= EachTurn * turns; i++)
        {
            (double X, double Y, double Z) now = At(i);
            length += Math.Sqrt(((now.X - before.X) * (now.X - before.X)) + ((now.Y - before.Y) * (now.Y - before.Y)) + ((now.Z - before.Z) * (now.Z - before.Z)));
            before = now;
        }

        return length;

        (double X, double Y, double Z) At(int i)
        {
            double round = 2 * Math.PI * i / EachTurn;
            double along = angle * i / (EachTurn * turns);
            double far = bend + (tube * Math.Cos(round));
            return (far * Math.Cos(along), far * Math.Sin(along), tube * Math.Sin(round));
        }
    }

    private static PublishedCase Case(string id, string what, double expected, double tolerance, string unit, string arithmetic, Func<double> compute) => new()
    {
        Id = "head-and-bend-lays/" + id,
        What = what,
        Evidence = Evidence.FirstPrinciples(arithmetic),
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };
}
