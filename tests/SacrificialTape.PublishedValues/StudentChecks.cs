using SacrificialTape.Inspection;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.PublishedValues;

/// <summary>Student's t as every textbook prints it, asked through the interval of a mean.</summary>
internal static class StudentChecks
{
    internal static CheckGroup Group => new(
        "Student's t: printed quantiles",
        "Recalled, as printed in any table. Asked through half the confidence interval of a mean of n readings, which is t s over the root of n. A general maths library is the second witness, in the unit tests.",
        [
            .. Row(4, 2.132, 2.776, 4.604), .. Row(5, 2.015, 2.571, 4.032), .. Row(9, 1.833, 2.262, 3.250), .. Row(10, 1.812, 2.228, 3.169),
            .. Row(19, 1.729, 2.093, 2.861), .. Row(29, 1.699, 2.045, 2.756), .. Row(60, 1.671, 2.000, 2.660),
        ]);

    private static IEnumerable<PublishedCase> Row(int freedom, double at95, double at975, double at995)
    {
        foreach ((double share, double t) in new[] { (0.95, at95), (0.975, at975), (0.995, at995) })
        {
            yield return new PublishedCase
            {
                Id = FormattableString.Invariant($"student/{freedom}/{share}"),
                What = FormattableString.Invariant($"t of {share} at {freedom} degrees of freedom"),
                Evidence = Evidence.From(References.StudentTables),
                Expected = t,
                Tolerance = 0.0005,
                Unit = "1",
                Compute = () => Quantile(freedom, share),
            };
        }
    }

    private static double Quantile(int freedom, double share)
    {
        // Any readings will do: what scatter and number make of t is divided out again.
        var readings = new ReadingStatistics(new ValueList<Length>(Enumerable.Range(0, freedom + 1).Select(static i => Length.FromMicrometers(70 + (i % 5)))));
        var life = Ask.LifeFromReadings(readings, 10, (2 * share) - 1);
        return life.HalfWidth.Micrometers * Math.Sqrt(readings.Count) / readings.StandardDeviation.Micrometers;
    }
}
