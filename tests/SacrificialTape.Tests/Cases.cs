using FsCheck;
using FsCheck.Fluent;

namespace SacrificialTape.Tests;

/// <summary>Generators with the ranges of real work. Dimensions lie on decimal grids, as they are read off a rule.</summary>
public static class Cases
{
    public static Arbitrary<SpiralCase> Spirals() => (
        from diameter in Tenths(100, 20_000)
        from width in Tenths(100, 3000)
        from share in Gen.Choose(5, 100)
        from turns in Gen.Choose(30, 400)
        from level in Gen.Choose(1, 3)
        select Spiral(diameter, width, share, turns, level)).ToArbitrary();

    public static Arbitrary<SpanCase> Spans() => (
        from width in Tenths(100, 3000)
        from share in Gen.Choose(0, 95)
        from strips in Gen.Choose(1, 900)
        let lap = Math.Floor(width * share / 10) / 10
        let span = Math.Max(5, Math.Round(width * strips / 10, 1))
        select new SpanCase(span, width, lap)).ToArbitrary();

    public static Arbitrary<BendCase> Bends() => (
        from diameter in Tenths(200, 12_000)
        from radius in Gen.Choose(105, 1000)
        from degrees in Gen.Choose(5, 180)
        from share in Gen.Choose(10, 60)
        from lap in Gen.Choose(0, 80)
        let bend = Math.Round(diameter * radius / 200, 1)
        let width = Math.Max(5, Math.Round(share / 100.0 * Math.Sqrt(diameter / 2 * (bend - (diameter / 2))), 1))
        select new BendCase(diameter, bend, degrees, width, Math.Floor(width * lap / 10) / 10)).ToArbitrary();

    public static Arbitrary<LossCase> Losses() => (
        from rate in Gen.Choose(-300, 300)
        from ratio in Gen.Choose(-600, 400)
        from exponent in Gen.Choose(200, 1000)
        select new LossCase(Math.Pow(10, rate / 100.0), Math.Pow(10, ratio / 100.0), exponent / 1000.0)).ToArbitrary();

    public static Arbitrary<CutCase> Cuts() => (
        from rollCm in Gen.Choose(250, 5000)
        from contingency in Gen.Choose(0, 30)
        from splice in Gen.Choose(0, 50)
        from shortest in Gen.Choose(60, 1200)
        from pieces in (
            from length in Gen.Choose(10_000, 9_000_000)
            from count in Gen.Choose(1, 12)
            from splits in Gen.Choose(0, 2)
            from cover in Gen.Choose(0, 100)
            from trim in Gen.Choose(0, 100)
            select new PieceCase(length, count, splits == 0, length * (long)cover / 100, (length - (length * (long)cover / 100)) * trim / 100))
            .NonEmptyListOf()
        select new CutCase(rollCm / 100.0, contingency / 100.0, splice, shortest, [.. pieces])).ToArbitrary();

    public static Arbitrary<PackCase> Packs() => (
        from roll in Gen.Choose(10, 120)
        from pieces in (
            from share in Gen.Choose(8, 100)
            from count in Gen.Choose(1, 3)
            select (share, count)).NonEmptyListOf()
        select new PackCase(roll, [.. pieces.Take(4).Select(piece => (Math.Max(1L, (long)roll * piece.share / 100), piece.count))])).ToArbitrary();

    public static Arbitrary<ChoiceCase> Choices() => (
        from diameter in Tenths(200, 6000)
        from length in Gen.Choose(100, 15_000)
        from years in Gen.Choose(1, 60)
        from category in Gen.Elements(CorrosivityCategory.C2, CorrosivityCategory.C3, CorrosivityCategory.C4, CorrosivityCategory.C5)
        from stocks in (
            from foil in Gen.Elements(0.05, 0.08, 0.1, 0.15, 0.25)
            from width in Gen.Elements(5.0, 25, 40, 50, 75, 100, 150)
            from roll in Gen.Elements(1.5, 10, 25, 30)
            select (foil, width, roll)).NonEmptyListOf()
        from laps in Gen.Elements(0.0, 5, 10, 12.5, 20, 50).NonEmptyListOf()
        from seed in Gen.Choose(0, 1_000_000)
        select new ChoiceCase(diameter, length, years, category, [.. stocks.Take(5)], [.. laps.Take(3)], seed)).ToArbitrary();

    private static Gen<double> Tenths(int low, int high) => Gen.Choose(low, high).Select(tenths => tenths / 10.0);

    private static SpiralCase Spiral(double diameter, double width, int share, int turns, int level)
    {
        // The advance across the strip must stay below the circumference.
        double most = Math.Min(width, 0.95 * Math.PI * diameter);
        double lap = Math.Round(Math.Max(0, width - (most * share / 100)), 2);
        double advance = (width - lap) / Math.Sqrt(1 - Math.Pow((width - lap) / (Math.PI * diameter), 2));
        double least = (width * width / Math.Max(1e-9, Math.Sqrt((width * width) - Math.Pow((width - lap) * width / (Math.PI * diameter), 2)))) + advance;
        return new SpiralCase(diameter, width, lap, Math.Round(least + (advance * turns / 10), 1), level);
    }
}
