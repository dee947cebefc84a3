using FsCheck;
using FsCheck.Fluent;

namespace SacrificialTape.Tests.Wrapping;

/// <summary>Generators of fittings with strips for them, in the ranges of real work and somewhat beyond.</summary>
public static class FittingLayCases
{
    public static Arbitrary<BendSpiralCase> BendSpirals() => (
        from diameter in Tenths(200, 12_000)
        from radius in Gen.Choose(110, 2000)
        from degrees in Gen.Choose(10, 360)
        from share in Gen.Choose(5, 35)
        from lap in Gen.Choose(2, 80)
        let bend = Math.Round(diameter * radius / 200, 1)
        let arc = (bend + (diameter / 2)) * degrees * Math.PI / 180
        let widest = Math.Min(Math.Sqrt(diameter / 2 * (bend - (diameter / 2))), Math.Min(arc, diameter))
        let width = Math.Max(1, Math.Round(share / 100.0 * widest, 1))
        select new BendSpiralCase(diameter, bend, degrees, width, Math.Floor(width * lap) / 100)).ToArbitrary();

    public static Arbitrary<MitredCase> Mitred() => (
        from diameter in Tenths(500, 12_000)
        from radius in Gen.Choose(110, 800)
        from joints in Gen.Choose(1, 6)
        from turn in Gen.Choose(20, 450)
        from share in Gen.Choose(5, 120)
        from lap in Gen.Choose(0, 80)
        from reach in Gen.Choose(0, 90)
        let bend = Math.Round(diameter * radius / 200, 1)
        let tangent = Math.Tan(turn * Math.PI / 3600)
        let outside = ((2 * bend) + diameter) * tangent
        let inside = ((2 * bend) - diameter) * tangent
        let width = Math.Min(2000, Math.Max(outside / 200, Math.Max(5, Math.Round(outside * share / 100, 1))))
        select new MitredCase(
            diameter, bend, joints * turn / 10.0, joints, width, Math.Floor(width * lap) / 100, inside / 2 * reach / 100)).ToArbitrary();

    public static Arbitrary<TeeCase> Tees() => (
        from run in Tenths(500, 12_000)
        from share in Gen.Choose(5, 125)
        from runEnd in Gen.Choose(0, 100)
        from branchEnd in Gen.Choose(0, 100)
        from strip in Gen.Choose(5, 90)
        from lap in Gen.Choose(0, 80)
        from saddle in Gen.Choose(0, 30)
        let branch = Math.Max(10, Math.Round(run * Math.Min(100, share) / 100, 1))
        let width = Math.Max(5, Math.Round(branch * strip / 100, 1))
        select new TeeCase(
            run, branch, (branch / 2) + (run * runEnd / 100), (run / 2) + (run * branchEnd / 100), width,
            Math.Floor(width * lap) / 100, Math.Round(run * saddle / 200, 1))).ToArbitrary();

    public static Arbitrary<EccentricCase> Eccentrics() => (
        from large in Tenths(300, 12_000)
        from small in Gen.Choose(20, 100)
        from length in Gen.Choose(30, 300)
        from share in Gen.Choose(3, 60)
        from lap in Gen.Choose(0, 80)
        let narrow = Math.Round(large * small / 100, 1)
        let width = Math.Max(2, Math.Round(narrow * share / 100, 1))
        select new EccentricCase(large, narrow, Math.Round(large * length / 100, 1), width, Math.Floor(width * lap) / 100)).ToArbitrary();

    private static Gen<double> Tenths(int low, int high) => Gen.Choose(low, high).Select(tenths => tenths / 10.0);
}
