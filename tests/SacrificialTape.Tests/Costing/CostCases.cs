using FsCheck;
using FsCheck.Fluent;

namespace SacrificialTape.Tests.Costing;

/// <summary>Generators of rates, lives and priced jobs. All prices are invented.</summary>
public static class CostCases
{
    public static Arbitrary<RateCase> Rates() => (
        from rate in Gen.Choose(-100, 300)
        from tenths in Gen.Choose(5, 1000)
        select new RateCase(rate / 1000.0, tenths / 10.0)).ToArbitrary();

    public static Arbitrary<OptionCase> Options() => (
        from rate in Gen.Choose(0, 200)
        from study in Gen.Choose(1, 80)
        from life in Gen.Choose(5, 900)
        from more in Gen.Choose(0, 300)
        from cost in Gen.Choose(0, 5_000_000)
        from area in Gen.Choose(1, 100_000)
        from yearly in Gen.Choose(0, 100_000)
        from interval in Gen.Choose(1, 40)
        select new OptionCase(rate / 1000.0, study, life / 10.0, (life + more) / 10.0, cost / 100m, area / 10.0, yearly / 100m, interval)).ToArbitrary();
}
