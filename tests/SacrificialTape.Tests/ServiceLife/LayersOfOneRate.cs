using FsCheck.Xunit;

namespace SacrificialTape.Tests.ServiceLife;

/// <summary>
/// All layers see one rate. Beside it, two layers whose rates had nothing to do with one another: their lives add up by
/// convolution, done here on fine steps of the chance of one layer.
/// </summary>
[Properties(Arbitrary = [typeof(SpreadCases)], MaxTest = 12)]
public sealed class LayersOfOneRate
{
    private const int Steps = 400;
    private const int Parts = 60;

    [Property]
    public void Where_a_high_confidence_is_asked_for_one_rate_is_the_safer_reading(SpreadCase given)
    {
        var one = new LifeDistribution(given.Foil, 1, given.Uncertainty);
        var two = new LifeDistribution(given.Foil, 2, given.Uncertainty);
        double sure = two.ReachedWith(Probability.FromFraction(0.95)).Duration.Years365;
        double lucky = two.ReachedWith(Probability.FromFraction(0.05)).Duration.Years365;

        Assert.True(Apart(one, sure) > 0.95);

        // Where lives are spread so widely that one of two is likely enough to last for both, rates apart are bolder still.
        if (Lucky(one) <= 7)
        {
            Assert.True(Apart(one, lucky) < 0.05);
        }
    }

    // A rate of ln-spread 0.8 to the power 1/0.415: one layer in twenty lasts many times the median.
    [Fact]
    public void Of_lives_spread_very_widely_rates_apart_are_the_bolder_reading()
    {
        var given = new SpreadCase(0.7748533, 0.80047904, 126.14187, 0.2006799, 0.839877, 0.3947468, 0.41485330, 0.02930526, 2, 0.78159614, 34);
        var one = new LifeDistribution(given.Foil, 1, given.Uncertainty);
        var two = new LifeDistribution(given.Foil, 2, given.Uncertainty);
        Assert.True(Lucky(one) > 7, $"{Lucky(one)}");
        Assert.InRange(Apart(one, two.ReachedWith(Probability.FromFraction(0.05)).Duration.Years365), 0.05, 0.1);
    }

    // Whatever the life wanted, the years that are missing on the mean are never fewer under one rate.
    [Property]
    public void One_rate_never_makes_the_mean_shortfall_smaller(SpreadCase given)
    {
        var one = new LifeDistribution(given.Foil, 1, given.Uncertainty);
        var two = new LifeDistribution(given.Foil, 2, given.Uncertainty);
        double wanted = two.ReachedWith(given.Sure).Duration.Years365;

        // The chance of one layer at every half step up to the life wanted, asked for once and shared by all sums.
        double[] chances = [.. Enumerable.Range(0, (2 * Parts * 20) + 1).Select(i => i == 0 ? 1 : Chance(one, wanted * i / (2 * Parts * 20)))];
        double shared = 0;
        double apart = 0;
        for (int i = 0; i < Parts; i++)
        {
            double years = wanted * (i + 0.5) / Parts;
            shared += 1 - two.ChanceOf(Lifetime.Of(Duration.FromYears365(years))).Fraction;
            apart += 1 - Apart(chances, 20 * ((2 * i) + 1));
        }

        // Parts of a mean of a year, with room for the steps.
        Assert.True(apart * wanted / Parts <= (shared * wanted / Parts * 1.01) + (1e-3 * wanted), $"{apart} against {shared}");
    }

    // A life that one layer in twenty reaches, over the median.
    private static double Lucky(LifeDistribution one) =>
        one.ReachedWith(Probability.FromFraction(0.05)).Duration.Years365 / one.ReachedWith(Probability.FromFraction(0.5)).Duration.Years365;

    private static double Apart(LifeDistribution one, double years) =>
        Apart([.. Enumerable.Range(0, (2 * Steps) + 1).Select(i => i == 0 ? 1 : Chance(one, years * i / (2 * Steps)))], 2 * Steps);

    // P(x + y >= years) = P(x >= years) + sum over slices of x below years of P(slice) P(y >= years - x), with the chance
    // of one layer known at every half slice and the years at an even half slice.
    private static double Apart(double[] chances, int years)
    {
        double chance = chances[years];
        for (int slice = 0; slice < years; slice += 2)
        {
            chance += (chances[slice] - chances[slice + 2]) * chances[years - slice - 1];
        }

        return chance;
    }

    private static double Chance(LifeDistribution life, double years) => life.ChanceOf(Lifetime.Of(Duration.FromYears365(years))).Fraction;
}
