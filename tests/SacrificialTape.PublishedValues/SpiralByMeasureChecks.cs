using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>The spiral under each way of stating its lap, against a spiral that is measured and not solved.</summary>
internal static class SpiralByMeasureChecks
{
    private const string Closest = "closest points of neighbouring edges on the unrolled pipe, by search";
    private const string Halving = "advance found by halving until the lap measured on the unrolled pipe is the one stated";
    private const string Walked = "one turn walked in 40 000 chords in space, times turns per metre";

    internal static CheckGroup Group => new(
        "A spiral measured on the unrolled pipe",
        "Each row is built without the library's formulas: the helix is walked in chords, laps are measured between edges, an advance is searched for. The textbook helix of radius 3 and advance 8 pi has the sides 3, 4 and 5.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. Across(60.3, 50, 25), .. Marks(60.3, 50, 25),
        .. Across(60.3, 100, 50), .. Marks(60.3, 100, 50),
        .. Across(114.3, 50, 25), .. Marks(114.3, 50, 25),
        .. Along(60.3, 50, 25), .. Along(60.3, 100, 20), .. Along(114.3, 50, 25), .. Along(323.9, 300, 30),
        TwentyIsEighteen(), .. Textbook(), UnitHelix(),
    ];

    private static IEnumerable<PublishedCase> Across(double d, double w, double lap)
    {
        double advance = UnrolledPipe.AdvanceWhere(p => UnrolledPipe.BetweenTurns(d, p), w - lap, 1e-3, 50 * d);
        return Row("across", d, w, lap, advance, SpiralSetting.FromTrueLap(Length.FromMillimeters(lap)));
    }

    private static IEnumerable<PublishedCase> Along(double d, double w, double lap)
    {
        double advance = UnrolledPipe.AdvanceWhere(
            p => p - UnrolledPipe.WidthAlongPipe(d, p, w), -lap, 1e-3, w);
        return Row("along", d, w, lap, advance, SpiralSetting.FromLapAlongPipe(Length.FromMillimeters(lap)));
    }

    private static IEnumerable<PublishedCase> Marks(double d, double w, double lap) =>
        Row("marks", d, w, lap, w - lap, SpiralSetting.FromLapBetweenMarks(Length.FromMillimeters(lap)));

    private static IEnumerable<PublishedCase> Row(string way, double d, double w, double lap, double advance, SpiralSetting setting)
    {
        double across = UnrolledPipe.BetweenTurns(d, advance);
        string id = FormattableString.Invariant($"measured/{way}-d{d}-w{w}-o{lap}");
        string what = FormattableString.Invariant($"{w} mm on {d} mm, {lap} mm stated {Said(way)}");

        PublishedCase Check(string part, string title, double expected, double tolerance, string unit, string how, Func<SpiralGeometry, double> read) => new()
        {
            Id = id + "/" + part,
            What = title + ", " + what,
            Evidence = Evidence.FirstPrinciples(how),
            Expected = expected,
            Tolerance = tolerance,
            Unit = unit,
            Compute = () => read(Ask.Spiral(d, w, setting)),
        };

        // A search for the least of a square root ends where its changes drown in rounding: eight digits.
        yield return Check("advance", "advance", advance, 1e-6, "mm", way == "marks" ? "the distance between the marks" : Halving, s => s.Advance.Millimeters);
        yield return Check("angle", "angle", UnrolledPipe.AngleByChords(d, advance), 1e-6, "deg", "once round over the turn walked in chords is the cosine", s => s.Angle.Degrees);
        yield return Check("true-lap", "true lap", w - across, 1e-6, "mm", Closest, s => s.TrueLap.Millimeters);
        yield return Check("axis-lap", "lap along the pipe", UnrolledPipe.WidthAlongPipe(d, advance, w) - advance, 1e-6, "mm", Closest, s => s.LapAlongPipe.Millimeters);
        double perMetre = UnrolledPipe.TurnByChords(d, advance) / advance;
        yield return new PublishedCase
        {
            Id = id + "/strip",
            What = "strip per metre of pipe, " + what,
            Evidence = Evidence.FirstPrinciples(Walked),
            Expected = perMetre,
            Tolerance = 1e-7,
            Unit = "m/m",
            Compute = () => PerMetre(d, w, setting),
        };
        yield return Check("layers", "tape area over pipe area", perMetre * w / (Math.PI * d), 1e-7, "1", Walked + ", times width over circumference", s => s.LayersOnAverage.Ratio);
    }

    // The difference of two lengths of pipe leaves the ends out.
    private static double PerMetre(double d, double w, SpiralSetting setting)
    {
        double Strip(double meters) =>
            new SpiralLay(Ask.Pipe(d, meters * 1000), Ask.Stock(w), setting, choices: Ask.Exact).Strips[0].Length.Millimeters;
        return (Strip(201) - Strip(1)) / 200_000;
    }

    private static PublishedCase TwentyIsEighteen() => new()
    {
        Id = "measured/twenty-along-is-eighteen-across",
        What = "true lap where 20 mm are measured along a 60.3 mm pipe with 100 mm strip, in whole mm",
        Evidence = Evidence.FirstPrinciples("on the pipe's paper the lap along the axis is the long side of the triangle; measured: 18"),
        Expected = 18,
        Tolerance = 0.5,
        Unit = "mm",
        Compute = () => Ask.Spiral(60.3, 100, SpiralSetting.FromLapAlongPipe(Length.FromMillimeters(20))).TrueLap.Millimeters,
    };

    private static IEnumerable<PublishedCase> Textbook()
    {
        // (3 cos t, 3 sin t, 4 t): round 6 pi, advance 8 pi, one turn 10 pi, and so e = 8 pi x 6/10.
        const double Diameter = 6;
        const double Width = 20;
        var setting = SpiralSetting.FromAdvance(Length.FromMillimeters(8 * Math.PI));
        yield return new PublishedCase
        {
            Id = "measured/three-four-five/turn",
            What = "strip of a flush spiral on one turn of the helix (3 cos t, 3 sin t, 4 t), 20 mm wide",
            Evidence = Evidence.FirstPrinciples("sides 3, 4, 5: one turn 10 pi, and 20 x 3/4 = 15 for the slanted ends"),
            Expected = 31.415927 + 15,
            Tolerance = 1e-3,
            Unit = "mm",
            Compute = () => new SpiralLay(Ask.Pipe(Diameter, 8 * Math.PI), Ask.Stock(Width), setting, choices: Ask.Exact).Strips[0].Length.Millimeters,
        };
        yield return new PublishedCase
        {
            Id = "measured/three-four-five/true-lap",
            What = "true lap of 20 mm strip on that helix",
            Evidence = Evidence.FirstPrinciples("20 - 8 pi x 3/5 = 20 - 15.0796447"),
            Expected = 4.9203553,
            Tolerance = 5e-8,
            Unit = "mm",
            Compute = () => Ask.Spiral(Diameter, Width, setting).TrueLap.Millimeters,
        };
        yield return new PublishedCase
        {
            Id = "measured/three-four-five/level",
            What = "strip of the spiral between level turns on 100 pi mm of that pipe",
            Evidence = Evidence.FirstPrinciples("100 pi x 5/4 = 392.6990817, less 20 x 3/4 = 15"),
            Expected = 377.6990817,
            Tolerance = 1e-3,
            Unit = "mm",
            Compute = () => new SpiralLay(Ask.Pipe(Diameter, 100 * Math.PI), Ask.Stock(Width), setting, SpiralEnds.LevelTurns(), Ask.Exact).Strips[0].Length.Millimeters,
        };
    }

    private static PublishedCase UnitHelix() => new()
    {
        Id = "measured/unit-helix",
        What = "one turn of the helix of radius 1 m and advance 1 m",
        Evidence = Evidence.FirstPrinciples("sqrt(4 pi^2 + 1) = sqrt(40.4784176) = 6.3622651"),
        Expected = 6.3622651,
        Tolerance = 5e-8,
        Unit = "m/m",
        Compute = () => PerMetre(2000, 1500, SpiralSetting.FromAdvance(Length.FromMeters(1))),
    };

    private static string Said(string way) => way switch
    {
        "across" => "across the strip",
        "along" => "along the pipe",
        _ => "by marks",
    };
}
