namespace SacrificialTape.CutPlans.Tests;

/// <summary>Instances whose best plan is published; the core's rules take more rolls for the first two.</summary>
public sealed class PublishedOptima
{
    [Fact]
    public void Paper_mill_of_the_encyclopedia_article_takes_73()
    {
        // Encyclopedia article "Cutting stock problem", the paper-mill example, read: 73 rolls at best, waste 0.401 %.
        SolvedCutPlan best = Solve(5600, [
            (1380, 22), (1520, 25), (1560, 12), (1710, 14), (1820, 18), (1880, 18), (1930, 20), (2000, 10), (2050, 12),
            (2100, 14), (2140, 16), (2150, 18), (2200, 20)]);
        Assert.Equal((73, 73, CutPlanStatus.Proved), ((int)best.Rolls, (int)best.LeastRolls, best.Status));
        Assert.Equal(0.401, 100 * (1 - (407.160 / (73 * 5.6))), 0.0005);
        Assert.Equal((73 * 5.6) - 407.160, best.Plan.OffcutsWorthKeeping.Sum(static offcut => offcut.Length.Meters * offcut.Count), 1e-9);
    }

    [Fact]
    public void Triplets_t60_00_take_20()
    {
        // Falkenauer's triplets, BPPLIB and OR-Library, instance t60_00, read: 20 rolls, none with a remnant.
        SolvedCutPlan best = Solve(1000, [.. new[]
        {
            495, 474, 473, 472, 466, 450, 445, 444, 439, 430, 419, 414, 410, 395, 372, 370, 366, 366, 366, 363, 361, 357,
            355, 351, 350, 350, 347, 320, 315, 307, 303, 299, 298, 298, 292, 288, 287, 283, 275, 275, 274, 273, 273, 272,
            272, 271, 269, 269, 268, 263, 262, 261, 259, 258, 255, 254, 252, 252, 252, 251,
        }.Select(static length => (length, 1))]);
        Assert.Equal((20, 20, CutPlanStatus.Proved), ((int)best.Rolls, (int)best.LeastRolls, best.Status));
        Assert.Empty(best.Plan.OffcutsWorthKeeping);
    }

    [Fact]
    public void Small_order_book_takes_47()
    {
        // AMPL: A Modeling Language for Mathematical Programming, cutting-stock chapter (recalled, check before use).
        // 46.25 rolls if they may be cut up a fraction of a time, so 47 is proved here and not only 45 as in the core.
        SolvedCutPlan best = Solve(110, [(20, 48), (45, 35), (50, 24), (55, 10), (75, 8)]);
        Assert.Equal((47, 47, CutPlanStatus.Proved), ((int)best.Rolls, (int)best.LeastRolls, best.Status));
        Assert.Equal("47 roll(s), proved minimal", best.ToString());
    }

    private static SolvedCutPlan Solve(int roll, (int Length, int Count)[] pieces) => SolvedCutPlan.Solve(
        pieces.Select(static piece => new CutPiece(Length.FromMillimeters(piece.Length), piece.Count)),
        Length.FromMillimeters(roll),
        Length.FromMicrometers(1),
        TimeSpan.FromMinutes(2),
        TestContext.Current.CancellationToken);
}
