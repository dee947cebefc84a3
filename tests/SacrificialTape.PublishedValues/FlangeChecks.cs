using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Dimensions and areas of flanges of class 150.</summary>
internal static class FlangeChecks
{
    internal static CheckGroup Group => new(
        "ASME B16.5 class 150: flanges",
        "Dimensions as read in two published tables of the standard that agree within 1 mm; bolt circles against their inches. The height of the raised face is recalled. Areas by counting points of a fine grid.",
        [.. Cases()]);

    // NPS, outside, thickness with raised face, bolt circle in inches, holes, their diameter, raised face.
    private static readonly (string Nps, double Outside, double Thickness, double CircleInches, int Holes, double Hole, double Face)[] Sizes =
    [
        ("1/2", 89, 11.2, 2.38, 4, 15, 35), ("2", 152, 19.1, 4.75, 4, 19, 92), ("3", 190, 23.9, 6, 4, 19, 127),
        ("4", 229, 23.9, 7.5, 8, 19, 157), ("6", 279, 25.4, 9.5, 8, 22, 216), ("8", 343, 28.6, 11.75, 8, 22, 270),
        ("12", 483, 31.8, 17, 12, 25, 381), ("24", 813, 47.7, 29.5, 20, 35, 692),
    ];

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((string nps, double outside, double thickness, double circle, int holes, double hole, double face) in Sizes)
        {
            FlangeSize size = FlangeSize.Class150(PipeSize.FromNps(nps));
            yield return Table(nps, "outside", "outside diameter", outside, nps == "3" ? 1 : 0, "mm", () => size.OutsideDiameter.Millimeters);
            yield return Table(nps, "thickness", "thickness with raised face", thickness, 0, "mm", () => size.Thickness.Millimeters);
            yield return Table(nps, "bolt-circle", "bolt circle", circle * 25.4, 0.5, "mm", () => size.BoltCircle.Millimeters);
            yield return Table(nps, "holes", "bolt holes", holes, 0, "1", () => size.BoltHoles);
            yield return Table(nps, "hole", "diameter of a bolt hole", hole, 0, "mm", () => size.BoltHoleDiameter.Millimeters);
            yield return Table(nps, "face", "diameter of the raised face", face, 0, "mm", () => size.RaisedFaceDiameter.Millimeters);
        }

        // 1/16 in, which the tables in mm round to 1.6: the rim is what the tables' thickness leaves.
        FlangeSize four = FlangeSize.Class150(PipeSize.FromNps("4"));
        yield return Case(
            "raised-face", "raised face of NPS 4", Evidence.From(References.RaisedFaceHeight), 25.4 / 16, 0.05, "mm",
            () => (four.Thickness - four.RimThickness).Millimeters);

        var flange = new Flange(four, Length.FromMillimeters(114.3), FlangeParts.Back | FlangeParts.Front);
        yield return Case(
            "back-4", "back of NPS 4, from the pipe to the rim", Evidence.FirstPrinciples("points of a grid of 0.1 mm outside the pipe, inside the rim and in no hole", References.FlangesClass150),
            Grid(229, 114.3, 190.5, 8, 19), 3e-6, "m2", () => flange.BackArea.SquareMeters);
        yield return Case(
            "front-4", "front of NPS 4, outside the raised face", Evidence.FirstPrinciples("points of a grid of 0.1 mm outside the raised face, inside the rim and in no hole", References.FlangesClass150),
            Grid(229, 157, 190.5, 8, 19), 3e-6, "m2", () => flange.FrontArea.SquareMeters);
    }

    private static PublishedCase Table(string nps, string id, string what, double expected, double tolerance, string unit, Func<double> compute) => Case(
        $"{nps}/{id}", $"NPS {nps}: {what}", Evidence.From(References.FlangesClass150), expected, tolerance, unit, compute);

    private static PublishedCase Case(string id, string what, Evidence evidence, double expected, double tolerance, string unit, Func<double> compute) => new()
    {
        Id = "b16-5/" + id,
        What = what,
        Evidence = evidence,
        Expected = expected,
        Tolerance = tolerance,
        Unit = unit,
        Compute = compute,
    };

    // Cells of 0.1 mm whose middle lies on steel. The bolt circle goes in here and not into the library's area.
    private static double Grid(double outside, double inside, double circle, int holes, double hole)
    {
        const double Cell = 0.1;
        int half = (int)Math.Ceiling(outside / 2 / Cell);
        long counted = 0;
        for (int i = -half; i < half; i++)
        {
            for (int j = -half; j < half; j++)
            {
                double x = (i + 0.5) * Cell;
                double y = (j + 0.5) * Cell;
                double squared = (x * x) + (y * y);
                if (4 * squared < outside * outside && 4 * squared > inside * inside && !InHole(x, y, circle, holes, hole))
                {
                    counted++;
                }
            }
        }

        return counted * Cell * Cell / 1e6;
    }

    private static bool InHole(double x, double y, double circle, int holes, double hole)
    {
        double step = 2 * Math.PI / holes;
        double nearest = Math.Round(Math.Atan2(y, x) / step) * step;
        double dx = x - (circle / 2 * Math.Cos(nearest));
        double dy = y - (circle / 2 * Math.Sin(nearest));
        return 4 * ((dx * dx) + (dy * dy)) < hole * hole;
    }
}
