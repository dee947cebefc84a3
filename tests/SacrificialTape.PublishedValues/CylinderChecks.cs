using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Circumference and area of pipe.</summary>
internal static class CylinderChecks
{
    internal static CheckGroup Group => new(
        "Area of a pipe",
        "Surface area per metre of three hollow sections, recalled; and the circumference between a polygon inside the circle and one outside it, sides doubled as Archimedes did.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        foreach ((double mm, double area) in new[] { (114.3, 0.359), (168.3, 0.529), (323.9, 1.018) })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"cylinder/area-per-metre-{mm}"),
                What = FormattableString.Invariant($"area of 1 m of {mm} mm pipe"),
                Evidence = Evidence.From(Sources.HollowSections),
                Expected = area,
                Tolerance = 0.0005,
                Unit = "m2",
                Compute = () => Ask.Pipe(mm, 1000).Area.SquareMeters,
            };
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"cylinder/circumference-{mm}"),
                What = FormattableString.Invariant($"circumference of {mm} mm pipe"),
                Evidence = Evidence.FirstPrinciples("mean of a polygon inside and one outside, 6 sides doubled 22 times"),
                Expected = mm * PerimeterOfUnitCircle(22),
                Tolerance = 1e-9,
                Unit = "mm",
                Compute = () => new SacrificialTape.Surfaces.StraightPipe(
                    Length.FromMillimeters(mm), Length.FromMeters(1)).Circumference.Millimeters,
            };
        }
    }

    // Circle of diameter 1. Outside 2 sqrt(3), inside 3: the harmonic, then the geometric mean doubles the sides.
    private static double PerimeterOfUnitCircle(int doublings)
    {
        double outside = 2 * Math.Sqrt(3);
        double inside = 3;
        for (int i = 0; i < doublings; i++)
        {
            outside = 2 * outside * inside / (outside + inside);
            inside = Math.Sqrt(outside * inside);
        }

        return (outside + inside) / 2;
    }
}
