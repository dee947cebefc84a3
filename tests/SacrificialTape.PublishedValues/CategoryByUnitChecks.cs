using SacrificialTape.Exposure;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.PublishedValues;

/// <summary>The standard rounds its two columns apart: close to a bound the unit of the measurement decides the category.</summary>
internal static class CategoryByUnitChecks
{
    internal static CheckGroup Group => new(
        "Between the two columns of ISO 9223",
        "The same loss of zinc, stated as thickness and as mass at 7.14 g/cm3. Between 8.40 and 8.403 um/a, and at each other bound that was rounded, the two columns differ by a category. Both answers are right in their own unit.",
        [.. Cases()]);

    private static IEnumerable<PublishedCase> Cases() =>
    [
        .. Pair(0.7001, 4.998714, CorrosivityCategory.C3, CorrosivityCategory.C2, "0.7 < 0.7001; 0.7001 x 7.14 = 4.998714 <= 5"),
        .. Pair(2.1005, 14.99757, CorrosivityCategory.C4, CorrosivityCategory.C3, "2.1 < 2.1005; 2.1005 x 7.14 = 14.99757 <= 15"),
        .. Pair(4.2010, 29.99514, CorrosivityCategory.C5, CorrosivityCategory.C4, "4.2 < 4.201; 4.201 x 7.14 = 29.99514 <= 30"),
        .. Pair(8.4, 59.976, CorrosivityCategory.C5, CorrosivityCategory.C5, "8.4 <= 8.4; 8.4 x 7.14 = 59.976 <= 60"),
        .. Pair(8.402, 59.99028, CorrosivityCategory.CX, CorrosivityCategory.C5, "8.4 < 8.402; 8.402 x 7.14 = 59.99028 <= 60"),
        .. Pair(8.404, 60.00456, CorrosivityCategory.CX, CorrosivityCategory.CX, "8.4 < 8.404; 8.404 x 7.14 = 60.00456 > 60"),
        .. Pair(25.1, 179.214, null, CorrosivityCategory.CX, "25 < 25.1; 25.1 x 7.14 = 179.214 <= 180"),
        .. Pair(25.22, 180.0708, null, null, "25 < 25.22; 25.22 x 7.14 = 180.0708 > 180"),
    ];

    private static IEnumerable<PublishedCase> Pair(
        double um, double grams, CorrosivityCategory? asThickness, CorrosivityCategory? asMass, string arithmetic)
    {
        string id = FormattableString.Invariant($"category-by-unit/{um}");
        Evidence evidence = Evidence.FirstPrinciples(arithmetic, References.CorrosivityCategories);
        yield return Check(id + "/thickness", FormattableString.Invariant($"zinc, {um} um/a as thickness"), asThickness, evidence, () => Ask.CategoryOfUm(um, Metal.Zinc));
        yield return Check(id + "/mass", FormattableString.Invariant($"zinc, {um} um/a turned into mass"), asMass, evidence, () => Ask.CategoryOfGrams(AsMass(um), Metal.Zinc));
        yield return new PublishedCase
        {
            Id = id + "/conversion",
            What = FormattableString.Invariant($"mass of {um} um/a of zinc"),
            Evidence = evidence,
            Expected = grams,
            Tolerance = 1e-9,
            Unit = "g/(m2.a)",
            Compute = () => AsMass(um),
        };
    }

    private static double AsMass(double um) =>
        CorrosionRate.FromMicrometersPerYear(um).ToMassLoss(Zinc.Density).GramsPerSquareMeterYear;

    private static PublishedCase Check(
        string id, string what, CorrosivityCategory? expected, Evidence evidence, Func<double> compute) => new()
        {
            Id = id,
            What = what,
            Evidence = evidence,
            Expected = (int?)expected ?? Ask.AboveScheme,
            Tolerance = 0,
            Unit = "category",
            Compute = compute,
            Show = Ask.CategoryName,
        };
}
