using FsCheck;
using FsCheck.Fluent;

namespace SacrificialTape.Tests;

/// <summary>Surfaces of revolution from 60 mm to 4 m, strips from a hundredth to a fifth of them.</summary>
public static class RevolvedCases
{
    public static Arbitrary<RevolvedCase> All() => (
        from form in Gen.Choose(0, 7)
        from diameter in Gen.Choose(600, 40_000)
        from share in Gen.Choose(0, 1000)
        from flange in Gen.Elements(0.0, 25, 80)
        from width in Gen.Choose(50, 1000)
        from lap in Gen.Choose(0, 60)
        select new RevolvedCase(form, diameter / 10.0, share / 1000.0, flange, width / 1000.0, lap / 100.0)).ToArbitrary();
}
