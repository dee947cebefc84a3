using FsCheck;
using FsCheck.Fluent;

namespace SacrificialTape.Tests;

/// <summary>Panels from a hand's breadth to a tank roof, strips from a finger's to a hand's breadth.</summary>
public static class PanelCases
{
    public static Arbitrary<PanelCase> Panels() => (
        from form in Gen.Choose(0, 2)
        from width in Gen.Choose(100, 20_000)
        from strips in Gen.Choose(3, 400)
        from aspect in Gen.Choose(20, 500)
        from lap in Gen.Choose(0, 80)
        from openings in Gen.Choose(0, 4)
        from seed in Gen.Choose(0, 1_000_000)
        let side = width / 2.0
        let strip = Math.Clamp(Math.Round(10 * side / strips, 1), 5, 2000)
        let height = form == 0 ? Math.Max(20, Math.Round(side * aspect / 100, 1)) : side
        select new PanelCase(form, side, height, strip, Math.Floor(strip * lap / 10) / 10, openings, seed)).ToArbitrary();
}
