using FsCheck.Xunit;

namespace SacrificialTape.Tests.ServiceLife;

/// <summary>
/// All layers see one rate. Beside it, two layers whose rates had nothing to do with one another: their lives add up by
/// convolution, done here on fine steps of the chance of one layer.
/// </summary>
[Properties(Arbitrary = [typeof(SpreadCases)], MaxTest = 12)]
public sealed class LayersOfOneRate
{
    private const int Steps = 1500;

    [Property]
    public void Where_a_high_confidence_is_asked_for_one_rate_is_the_safer_reading(SpreadCase given)
    {
        var one = new LifeDistribution(given.Foil, 1, given.Uncertainty);
        var two = new LifeDistribution(given.Foil, 2, given.Uncertainty);
        double sure = two.ReachedWith(Probability.FromFraction(0.95)).Duration.Years365;
        double lucky = two.ReachedWith(Probability.FromFraction(0.05)).Duration.Years365;

        Assert.True(Apart(one, sure) > 0.95);
        Assert.True(Apart(one, lucky) < 0.05);
    }

    // Whatever the life wanted, the years that are missing on the mean are never fewer under one rate.
    [Property]
    public void One_rate_never_makes_the_mean_shortfall_smaller(SpreadCase given)
    {
        var one = new LifeDistribution(given.Foil, 1, given.Uncertainty);
        var two = new LifeDistribution(given.Foil, 2, given.Uncertainty);
        double wanted = two.ReachedWith(given.Sure).Duration.Years365;
        double shared = 0;
        double apart = 0;
        const int Parts = 60;
        for (int i = 0; i < Parts; i++)
        {
            double years = wanted * (i + 0.5) / Parts;
            shared += 1 - two.ChanceOf(Lifetime.Of(Duration.FromYears365(years))).Fraction;
            apart += 1 - Apart(one, years);
        }

        // Parts of a mean of a year, with room for the steps.
        Assert.True(apart * wanted / Parts <= (shared * wanted / Parts * 1.01) + (1e-3 * wanted), $"{apart} against {shared}");
    }

    // P(x + y >= years) = P(x >= years) + sum over slices of x below years of P(slice) P(y >= years - x).
    private static double Apart(LifeDistribution one, double years)
    {
        double chance = Chance(one, years);
        double above = 1;
        for (int i = 0; i < Steps; i++)
        {
            double end = years * (i + 1) / Steps;
            double then = Chance(one, end);
            chance += (above - then) * Chance(one, years - (years * (i + 0.5) / Steps));
            above = then;
        }

        return chance;
    }

    private static double Chance(LifeDistribution life, double years) => life.ChanceOf(Lifetime.Of(Duration.FromYears365(years))).Fraction;
}
