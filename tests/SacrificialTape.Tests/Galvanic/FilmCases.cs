using FsCheck;
using FsCheck.Fluent;

namespace SacrificialTape.Tests.Galvanic;

/// <summary>Films from humid to wet, from rain to seawater; strips and gaps of a trade's size.</summary>
public static class FilmCases
{
    public static Arbitrary<FilmCase> Films() => (
        from film in Powers(0, 30)
        from sigma in Powers(-30, 7)
        from zinc in Powers(0, 22)
        from steel in Powers(-5, 22)
        from zincOhm in Powers(-15, 5)
        from steelOhm in Powers(-5, 10)
        from zincOwn in Powers(-25, -10)
        from steelOwn in Powers(-25, -10)
        from limit in Powers(3, 20)
        select new FilmCase(film, sigma, zinc, steel, zincOhm, steelOhm, zincOwn, steelOwn, limit)).ToArbitrary();

    // Tenths of a power of ten.
    private static Gen<double> Powers(int low, int high) => Gen.Choose(low, high).Select(static tenths => Math.Pow(10, tenths / 10.0));
}
