using FsCheck;
using FsCheck.Fluent;

namespace SacrificialTape.Tests.ServiceLife;

/// <summary>Generators of curves of loss.</summary>
public static class CurveCases
{
    public static Arbitrary<CurveCase> Curves() => (
        from rate in Gen.Choose(-200, 200)
        from steps in (
            from years in Gen.Choose(1, 80)
            from um in Gen.Choose(1, 400)
            select (years / 10.0, um / 10.0)).ListOf(5)
        from count in Gen.Choose(2, 5)
        from share in Gen.Choose(1, 1500)
        let first = new[] { (1.0 + steps[0].Item1, steps[0].Item2) }
        select new CurveCase(Math.Pow(10, rate / 100.0), [.. first.Concat(steps.Skip(1)).Take(count)], share / 1000.0)).ToArbitrary();
}
