using SacrificialTape.Surfaces;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Area of shells with openings.</summary>
internal static class ShellAreaChecks
{
    internal static CheckGroup Group => new(
        "Area of shells with openings",
        "The unrolled shell in narrow strips along it, each less the chord of the pipe that stands on it; rectangles taken off by hand.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases()
    {
        // A nozzle of some share of the diameter, up to all of it, and a rectangle elsewhere.
        foreach ((double diameter, double height, double nozzle, double along, double around) in new[]
        {
            (3000.0, 8000.0, 609.6, 1000.0, 800.0), (1000, 2500, 900, 500, 250), (1000, 2500, 1000, 500, 250),
        })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"shell/{diameter}-{nozzle}"),
                What = FormattableString.Invariant($"shell {diameter} mm, {height} mm high, nozzle {nozzle} mm, opening {along} x {around} mm"),
                Evidence = Evidence.FirstPrinciples("strips round the unrolled shell, 200000 of them, less what lies in the nozzle and the rectangle"),
                Expected = Strips(diameter, height, nozzle, along, around) / 1e6,
                Tolerance = 1e-6,
                Unit = "m2",
                Compute = () => new Shell(
                    Length.FromMillimeters(diameter),
                    Length.FromMillimeters(height),
                    ShellAxis.Upright,
                    [ShellOpening.Round(Length.FromMillimeters(nozzle)), ShellOpening.Rectangular(Length.FromMillimeters(along), Length.FromMillimeters(around))]).Area.SquareMeters,
            };
        }
    }

    // A strip along the shell at the angle t lies R sin t off the nozzle's middle plane: there the nozzle is as long as
    // its chord. On the far side of the shell there is none.
    private static double Strips(double diameter, double height, double nozzle, double along, double around)
    {
        const int Count = 200_000;
        double width = Math.PI * diameter / Count;
        double area = 0;
        for (int i = 0; i < Count; i++)
        {
            double t = 2 * Math.PI * (i + 0.5) / Count;
            double off = diameter / 2 * Math.Sin(t);
            double chord = Math.Cos(t) > 0 && 2 * Math.Abs(off) < nozzle ? Math.Sqrt((nozzle * nozzle) - (4 * off * off)) : 0;
            area += width * (height - chord);
        }

        return area - (along * around);
    }
}
