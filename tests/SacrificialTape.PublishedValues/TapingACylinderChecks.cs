using SacrificialTape.Provenance;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>A strip wound without lap, against the two formulas that the source prints.</summary>
internal static class TapingACylinderChecks
{
    internal static CheckGroup Group => new(
        "Math Forum, 'Taping a Cylinder', 2001",
        "The source prints sin A = w/(pi d), the net length pi d h/w, and the length with both slanted ends left on, pi d h/w + sqrt(pi^2 d^2 - w^2). It has no worked number: the numbers are the printed formulas worked out apart from the library.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        Evidence typed = Evidence.FromFormula(References.TapingACylinder, "worked out in decimal arithmetic and typed in");
        yield return Angle(100, 50, 9.1578495, 5e-8, typed);
        yield return Net(100, 50, 1000, 6283.185, 5e-4, typed);
        yield return WithEnds(100, 50, 1000, 6593.340, 5e-4, typed);

        Evidence printed = Evidence.FromFormula(References.TapingACylinder, "the printed formula as it stands");
        foreach ((double d, double w, double h) in new[]
        {
            (21.3, 10.0, 400.0), (60.3, 100.0, 2500.0), (114.3, 150.0, 6000.0), (323.9, 300.0, 12000.0), (1219.0, 100.0, 11800.0),
        })
        {
            double circumference = Math.PI * d;
            double net = Math.PI * d * h / w;
            yield return Angle(d, w, Math.Asin(w / circumference) * 180 / Math.PI, 1e-9, printed);

            // Strips are counted in whole micrometres: half of one is the last digit.
            yield return Net(d, w, h, net, 1e-3, printed);
            yield return WithEnds(d, w, h, net + Math.Sqrt((circumference * circumference) - (w * w)), 1e-3, printed);
        }
    }

    private static PublishedCase Angle(double d, double w, double expected, double tolerance, Evidence evidence) => new()
    {
        Id = FormattableString.Invariant($"taping/angle-d{d}-w{w}"),
        What = FormattableString.Invariant($"angle, {w} mm strip without lap on {d} mm"),
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = "deg",
        Compute = () => Ask.Spiral(d, w, SpiralSetting.FromTrueLap(Length.Zero)).Angle.Degrees,
    };

    private static PublishedCase Net(double d, double w, double h, double expected, double tolerance, Evidence evidence) => new()
    {
        Id = FormattableString.Invariant($"taping/net-d{d}-w{w}-h{h}"),
        What = FormattableString.Invariant($"net length, {w} mm strip without lap on {h} mm of {d} mm pipe"),
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = "mm",
        Compute = () => Only(d, w, h).Cover.Millimeters,
    };

    private static PublishedCase WithEnds(double d, double w, double h, double expected, double tolerance, Evidence evidence) => new()
    {
        Id = FormattableString.Invariant($"taping/with-ends-d{d}-w{w}-h{h}"),
        What = FormattableString.Invariant($"length with both slanted ends, {w} mm strip without lap on {h} mm of {d} mm pipe"),
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = "mm",
        Compute = () => Only(d, w, h).Length.Millimeters,
    };

    private static Strip Only(double d, double w, double h) =>
        new SpiralLay(Ask.Pipe(d, h), Ask.Stock(w), SpiralSetting.FromTrueLap(Length.Zero), choices: Ask.Exact).Strips[0];
}
