using FsCheck.Xunit;
using SacrificialTape.Tests.ServiceLife;

namespace SacrificialTape.Tests.Provenance;

/// <content>Lives with their uncertainty.</content>
public sealed partial class ShownWorkings
{
    [Property(Arbitrary = [typeof(SpreadCases)], MaxTest = 40)]
    public void Of_a_life_with_its_uncertainty(SpreadCase given)
    {
        IReadOnlyDictionary<string, double> shown = Checked(given.Life);
        Near.Equal(given.Life.ReachedWith(Probability.FromFraction(0.5)).Duration.Years365, shown["t_c"], 0);
        if (given.ToleranceShare == 0 && given.UsableSpread == 0 && given.Error == 0)
        {
            Near.Equal(1, shown["k"], 1e-12);
        }
    }

    [Fact]
    public static void Of_a_life_reached_more_surely_than_not()
    {
        for (int kind = 0; kind < 8; kind++)
        {
            LifeDistribution life = new SpreadCase(1.5, 0.3, 100, 0.1, 0.8, 0.1, 0.813, 0.03, 2, 0.9, kind).Life;
            Probability sure = Probability.FromFraction(0.9);
            Workings workings = life.ShowReachedWith(sure);
            Assert.All(workings.Steps, static step => Assert.True(Recomputation.Agrees(step, Recomputation.Of(step)), step.ToString()));
            Assert.Equal(life.ReachedWith(sure).Duration.Years365, workings.Steps[^1].Result.Number);

            // 1.2816 is the 90 % point of the normal distribution.
            Near.Equal(1.5 * Math.Exp(1.2815515655446 * 0.3), workings.Steps.Single(static step => step.Formula.Id == "rate.at-confidence").Result.Number, 1e-12);
        }
    }

    [Fact]
    public static void Of_bounds_read_as_quantiles()
    {
        var rate = UncertainRate.FromCategory(CorrosivityCategory.C4, Probability.FromFraction(0.1));
        IReadOnlyDictionary<string, double> shown = Checked(rate);
        Near.Equal(rate.LogNormal.Median.MicrometersPerYear, shown["m"], 0);
        Near.Equal(rate.LogNormal.Spread.Value, shown["s"], 0);
        Ends(Checked(UncertainExponent.Zinc), UncertainExponent.Zinc.StandardError);
    }
}
