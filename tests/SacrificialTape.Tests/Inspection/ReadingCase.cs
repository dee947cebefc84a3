using FsCheck.Fluent;

namespace SacrificialTape.Tests.Inspection;

/// <summary>Readings of a foil of 100 um, 3 to 12 of them from 30 to 95 um, an age, a law.</summary>
public sealed record ReadingCase(double[] Um, double Age, double Exponent, double Coverage, double Confidence)
{
    internal ReadingStatistics Statistics => InspectionMake.Statistics(this.Um);

    internal PowerLawLoss Law => new(TimeExponent.FromValue(this.Exponent));

    internal static FsCheck.Arbitrary<ReadingCase> Any() => (
        from count in Gen.Choose(3, 12)
        from um in Gen.ArrayOf(Between(30, 95), count)
        from age in Between(0.5, 40)
        from exponent in Between(0.4, 1)
        from coverage in Between(0.55, 0.99)
        from confidence in Between(0.55, 0.99)
        select new ReadingCase(um, age, exponent, coverage, confidence)).ToArbitrary();

    internal static FsCheck.Gen<double> Between(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(share => low + ((high - low) * share / 1_000_000));
}
