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
    public static void Of_bounds_read_as_quantiles()
    {
        var rate = UncertainRate.FromCategory(CorrosivityCategory.C4, Probability.FromFraction(0.1));
        IReadOnlyDictionary<string, double> shown = Checked(rate);
        Near.Equal(rate.LogNormal.Median.MicrometersPerYear, shown["m"], 0);
        Near.Equal(rate.LogNormal.Spread.Value, shown["s"], 0);
        Ends(Checked(UncertainExponent.Zinc), UncertainExponent.Zinc.StandardError);
    }
}
