using FsCheck.Xunit;
using static SacrificialTape.Tests.Inspection.InspectionMake;

namespace SacrificialTape.Tests.Inspection;

/// <summary>Gumbel's distribution fitted to greatest losses.</summary>
[Properties(Arbitrary = [typeof(InspectionCases)], MaxTest = 60)]
public sealed class GreatestLosses
{
    [Property]
    public void Likelihood_is_greatest_at_the_fit(ReadingCase given)
    {
        LargestLosses fit = Fit(given.Um, GumbelMethod.MaximumLikelihood);
        (double l, double a) = (fit.Location.Micrometers, fit.Scale.Micrometers);
        double best = LogLikelihood(given.Um, l, a);
        foreach ((double dl, double da) in new[] { (0.01, 1.0), (-0.01, 1), (0, 1.01), (0, 0.99), (0.01, 1.01), (-0.01, 0.99), (0.3, 1.2), (-0.3, 0.8) })
        {
            Assert.True(LogLikelihood(given.Um, l + (dl * a), a * da) < best);
        }
    }

    [Property]
    public void Fits_follow_shift_and_scale(ReadingCase given)
    {
        foreach (GumbelMethod method in Enum.GetValues<GumbelMethod>())
        {
            LargestLosses one = Fit(given.Um, method);
            LargestLosses other = Fit([.. given.Um.Select(static um => (3 * um) + 50)], method);
            Near.Equal((3 * one.Location.Micrometers) + 50, other.Location.Micrometers, 1e-9);
            Near.Equal(3 * one.Scale.Micrometers, other.Scale.Micrometers, 1e-9);
            Near.Equal((3 * one.LargestLoss.Micrometers) + 50, other.LargestLoss.Micrometers, 1e-9);
        }
    }

    [Property]
    public void A_larger_whole_loses_more_and_the_shortcut_is_above(ReadingCase given)
    {
        double before = 0;
        foreach (double whole in new[] { 12, 40, 300, 5000.0 })
        {
            LargestLosses fit = Fit(given.Um, GumbelMethod.Moments, whole);
            Assert.True(fit.LargestLoss.Micrometers > before);
            before = fit.LargestLoss.Micrometers;
            Assert.True(fit.LargestLossByLogarithm > fit.LargestLoss);
            Near.Equal(fit.LargestLossByLogarithm.Micrometers, fit.LargestLoss.Micrometers, 1, absolute: fit.Scale.Micrometers / whole);

            // The chance that all T areas stay below x, multiplied out.
            double p95 = fit.NotExceededWith(Share(0.95)).Micrometers;
            double each = Math.Exp(-Math.Exp(-(p95 - fit.Location.Micrometers) / fit.Scale.Micrometers));
            Near.Equal(0.95, Math.Pow(each, fit.ReturnPeriod), 1e-9);
        }
    }

    // Thirty digits, outside this library.
    [Fact]
    public void Likelihood_agrees_with_thirty_digits()
    {
        LargestLosses fit = Fit([12, 17, 15, 22, 31, 19, 14, 26], GumbelMethod.MaximumLikelihood);
        Near.Equal(4.65382291097, fit.Scale.Micrometers, 1e-10);
        Near.Equal(16.6870348897, fit.Location.Micrometers, 1e-10);
    }

    [Fact]
    public void Small_samples_and_long_periods_are_told()
    {
        Assert.Empty(Fit([12, 17, 15, 22], GumbelMethod.Moments, 100).Judge(RuleSet.Default, "here"));
        Assert.Equal([RuleIds.ExtremeSampleShare], Fit([12, 17, 15], GumbelMethod.Moments, 101).Judge(RuleSet.Default, "here").Select(static one => one.Rule.Id));
        Assert.Equal(
            [RuleIds.ExtremeReturnPeriod],
            Fit([.. Enumerable.Range(0, 20).Select(static i => 10.0 + i)], GumbelMethod.Moments, 501).Judge(RuleSet.Default, "here").Select(static one => one.Rule.Id));
    }

    [Fact]
    public void Bad_losses_are_refused()
    {
        Errors.Refused(static () => Fit([1, 2], GumbelMethod.Moments), "losses");
        Errors.Refused(static () => Fit([2, 2, 2], GumbelMethod.MaximumLikelihood), "losses", "all equal");
        Errors.Refused(static () => Fit([0, 0, 0], GumbelMethod.MaximumLikelihood), "losses");
        Errors.Refused(static () => Fit([-1, 2, 3], GumbelMethod.Moments), "losses");
        Errors.Refused(static () => Fit([1, 2, 3], GumbelMethod.Moments, 2), "wholeArea", "all samples together");
    }

    private static LargestLosses Fit(double[] um, GumbelMethod method, double wholeM2 = 200) =>
        new(new ValueList<Length>(um.Select(Um)), Area.FromSquareMeters(1), Area.FromSquareMeters(wholeM2), method);

    private static double LogLikelihood(double[] um, double location, double scale) => um.Sum(x =>
    {
        double z = (x - location) / scale;
        return -Math.Log(scale) - z - Math.Exp(-z);
    });
}
