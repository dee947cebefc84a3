using SacrificialTape.Provenance;
using SacrificialTape.Surfaces;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Radii of elbows by size, and rings and strains on them worked out another way.</summary>
internal static class ElbowChecks
{
    internal static CheckGroup Group => new(
        "ASME B16.9: elbows",
        "Centre to end of long radius elbows as printed in a table of reducing elbows with the same dimension; of short radius elbows, half the centre-to-centre dimension of 180 degree returns. Rings are set down one by one until the bend is closed; the strain of their edges is found by stepping along the curvature equation.",
        [.. LongRadius(), .. ShortRadius(), .. Rings()]);

    private static IEnumerable<PublishedCase> LongRadius()
    {
        (string Nps, double Mm)[] rows = [("4", 152), ("6", 229), ("8", 305), ("10", 381), ("12", 457), ("16", 610), ("24", 914)];
        foreach ((string nps, double mm) in rows)
        {
            yield return Radius($"b16.9/long-{nps}", $"long radius of NPS {nps}", References.LongRadiusElbows, mm, () => Bend.LongRadius(PipeSize.FromNps(nps), Right));
        }
    }

    private static IEnumerable<PublishedCase> ShortRadius()
    {
        (string Nps, double Returns)[] rows = [("1", 51), ("4", 203), ("6", 305), ("16", 813), ("24", 1219)];
        foreach ((string nps, double returns) in rows)
        {
            yield return Radius($"b16.9/short-{nps}", $"short radius of NPS {nps}, half of {returns} mm", References.ShortRadiusReturns, returns / 2, () => Bend.ShortRadius(PipeSize.FromNps(nps), Right));
        }
    }

    private static IEnumerable<PublishedCase> Rings()
    {
        var bend = new Bend(Length.FromMillimeters(168.3), Length.FromMillimeters(229), Right);
        BendRingLay Lay(double width, double lap) => new(bend, Ask.Stock(width), Length.FromMillimeters(lap), Ask.Exact);
        foreach ((double width, double lap) in new[] { (50.0, 25.0), (50.0, 10.0), (30.0, 10.0) })
        {
            double outside = (229 + 84.15) * Math.PI / 2;
            double reached = 0; // where the straight pipe's tape ends; each ring gets a lap further by its width
            int rings = 0;
            while (reached < outside + lap)
            {
                reached += width - lap;
                rings++;
            }

            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"b16.9/rings-w{width}-o{lap}"),
                What = FormattableString.Invariant($"rings {width} mm wide, lap {lap} mm, on a long radius 90 degree elbow of NPS 6"),
                Evidence = Evidence.FirstPrinciples("ring after ring along the outside, from a lap before one tangent until a lap past the other is reached", References.LongRadiusElbows),
                Expected = rings,
                Tolerance = 0,
                Unit = "rings",
                Compute = () => Lay(width, lap).Rings,
            };
        }

        yield return Strain("b16.9/pucker-w50", "pucker of a 50 mm strip there, %", 100 * (1 - Beside(1 / (84.15 * (229 + 84.15)), 25)), () => 100 * Lay(50, 10).Pucker.Fraction);
        yield return Strain("b16.9/stretch-w50", "stretch of a 50 mm strip there, %", 100 * (Beside(-1 / (84.15 * (229 - 84.15)), 25) - 1), () => 100 * Lay(50, 10).Stretch.Fraction);
    }

    private static Angle Right => Angle.FromDegrees(90);

    private static PublishedCase Radius(string id, string what, SourceReference source, double mm, Func<Bend> bend) => new()
    {
        Id = id,
        What = what,
        Evidence = Evidence.From(source),
        Expected = mm,
        Tolerance = 0,
        Unit = "mm",
        Compute = () => bend().BendRadius.Millimeters,
    };

    private static PublishedCase Strain(string id, string what, double expected, Func<double> compute) => new()
    {
        Id = id,
        What = what,
        Evidence = Evidence.FirstPrinciples("J'' = -K J stepped from the centre line of the strip to its edge"),
        Expected = expected,
        Tolerance = 1e-5,
        Unit = "%",
        Compute = compute,
    };

    private static double Beside(double curvature, double distance)
    {
        const int Steps = 20_000;
        double h = distance / Steps;
        double j = 1;
        double slope = -curvature * h / 2;
        for (int i = 0; i < Steps; i++)
        {
            j += slope * h;
            slope -= curvature * j * h;
        }

        return j;
    }
}
