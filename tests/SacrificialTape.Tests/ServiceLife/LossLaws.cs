using FsCheck.Xunit;

namespace SacrificialTape.Tests.ServiceLife;

[Properties(Arbitrary = [typeof(Cases)], MaxTest = 500)]
public sealed class LossLaws
{
    [Property]
    public void Loss_and_time_are_inverse_of_one_another(LossCase given)
    {
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(given.Rate);
        foreach (ILossLaw law in Laws(given))
        {
            Lifetime time = law.TimeToLoss(rate, Length.FromMicrometers(given.LossUm));
            Near.Equal(given.LossUm, law.Loss(rate, time.Duration).Micrometers, 1e-12, law.Name);
            var years = Duration.FromYears365(given.Ratio);
            Near.Equal(given.Ratio, law.TimeToLoss(rate, law.Loss(rate, years)).Duration.Years365, 1e-12, law.Name);
        }
    }

    [Property]
    public void The_power_law_bends_into_its_tangent_at_twenty_years(LossCase given)
    {
        ILossLaw law = Power(given);
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(given.Rate);
        double Loss(double years) => law.Loss(rate, Duration.FromYears365(years)).Micrometers;
        Near.Equal(Loss(20), Loss(20 + 1e-9), 1e-9);
        Near.Equal(Loss(20), Loss(20 - 1e-9), 1e-9);
        double before = (Loss(20) - Loss(20 - 1e-4)) / 1e-4;
        double after = (Loss(20 + 1e-4) - Loss(20)) / 1e-4;
        Near.Equal(before, after, 1e-4, "slope");

        // Straight beyond, and never below the power law that it touches.
        Near.Equal(Loss(60), (Loss(40) + Loss(80)) / 2, 1e-12);
        Assert.True(Loss(80) >= given.Rate * Math.Pow(80, given.Exponent) * (1 - 1e-12));
        Near.Equal(given.Rate * Math.Pow(7, given.Exponent), Loss(7), 1e-12);
    }

    [Property]
    public void More_zinc_lasts_longer_and_a_higher_rate_shorter(LossCase given, byte more)
    {
        double factor = 1 + ((more + 1) / 50.0);
        foreach (ILossLaw law in Laws(given))
        {
            Lifetime Time(double rate, double um) => law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(rate), Length.FromMicrometers(um));
            Assert.True(Time(given.Rate, given.LossUm * factor) > Time(given.Rate, given.LossUm));
            Assert.True(Time(given.Rate * factor, given.LossUm) < Time(given.Rate, given.LossUm));
        }
    }

    [Property]
    public void The_linear_law_is_the_shorter_over_a_year_and_the_longer_below(LossCase given)
    {
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(given.Rate);
        double linear = LinearLoss.Law.TimeToLoss(rate, Length.FromMicrometers(given.LossUm)).Duration.Years365;
        double power = Power(given).TimeToLoss(rate, Length.FromMicrometers(given.LossUm)).Duration.Years365;
        Assert.True(given.Ratio >= 1 ? linear <= power * (1 + 1e-12) : linear >= power * (1 - 1e-12), $"{linear} and {power} at {given.Ratio}");
    }

    [Property]
    public void Only_the_ratio_of_zinc_to_rate_counts(LossCase given)
    {
        foreach (ILossLaw law in Laws(given))
        {
            double one = law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(given.Rate), Length.FromMicrometers(given.LossUm)).Duration.Years365;
            double mils = law.TimeToLoss(CorrosionRate.FromMilsPerYear(given.Rate), Length.FromMils(given.LossUm)).Duration.Years365;
            double millimetres = law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(given.Rate), Length.FromMillimeters(given.LossUm / 1000)).Duration.Years365;
            Near.Equal(one, mils, 1e-12);
            Near.Equal(one, millimetres, 1e-12);
            Near.Equal(one, law.TimeToLoss(CorrosionRate.FromMicrometersPerYear(1), Length.FromMicrometers(given.Ratio)).Duration.Years365, 1e-12);
        }
    }

    [Property]
    public void No_corrosion_never_uses_zinc_up(LossCase given)
    {
        CorrosionRate none = CorrosionRate.FromMicrometersPerYear(0);
        foreach (ILossLaw law in Laws(given))
        {
            Assert.True(law.TimeToLoss(none, Length.FromMicrometers(given.LossUm)).IsUnlimited);
            Assert.Equal(0, law.Loss(none, Duration.FromYears365(given.Ratio)).Micrometers);
        }
    }

    [Property]
    public void One_more_layer_or_thicker_foil_never_shortens_a_life(LossCase given, byte layers)
    {
        ZincExposure exposure = ZincExposure.FromMeasurement(
            CorrosionRate.FromMicrometersPerYear(given.Rate / 3), CorrosionRate.FromMicrometersPerYear(given.Rate), "a made-up coupon");
        LifeEstimate Of(int n, double mm) => new(new Foil(Make.Mm(mm), Make.Mm(0.008)), n, exposure, Utilisation.FromFraction(0.8));
        int count = layers % 20;
        LifeEstimate one = Of(count, 0.1);
        LifeEstimate more = Of(count + 1, 0.1);
        LifeEstimate thicker = Of(count, 0.15);
        Assert.True(more.Earliest > one.Earliest && more.Latest > one.Latest);
        Assert.True(thicker.Earliest >= one.Earliest && thicker.Latest >= one.Latest);
        Assert.True(one.Earliest <= one.Latest);
        Assert.All(one.ByLaw, life => Assert.True(life.Earliest <= life.Latest && one.Earliest <= life.Earliest && one.Latest >= life.Latest));
        Near.Equal(80 * count, one.ZincCounted.Micrometers, 1e-12);
    }

    [Fact]
    public void An_exponent_of_one_is_the_linear_law()
    {
        var law = new PowerLawLoss(TimeExponent.FromValue(1));
        foreach (double years in new[] { 0, 0.1, 1, 19.9, 20, 20.1, 75 })
        {
            Near.Equal(3.3 * years, law.Loss(CorrosionRate.FromMicrometersPerYear(3.3), Duration.FromYears365(years)).Micrometers, 1e-14);
        }
    }

    [Fact]
    public void Negative_times_losses_and_layers_are_refused()
    {
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(1);
        foreach (ILossLaw law in new ILossLaw[] { LinearLoss.Law, PowerLawLoss.ZincMean })
        {
            Errors.Refused(() => law.Loss(rate, Duration.FromYears365(-1)), "time", "-1 a", "at least 0 a");
            Errors.Refused(() => law.TimeToLoss(rate, Length.FromMicrometers(-1)), "loss", "-1 um", "at least 0 um");
        }

        Errors.Refused(static () => Lifetime.Of(Duration.FromYears365(-1)), "duration", "-1 a", "at least 0 a");
        ZincExposure exposure = ZincExposure.FromCategory(CorrosivityCategory.C3);
        Errors.Refused(() => new LifeEstimate(new Foil(Make.Mm(0.1)), -1, exposure, Utilisation.FromFraction(0.8)), "layersEverywhere", "-1 layers", "at least 0");
        Assert.Contains("at least one loss law", Assert.Throws<ArgumentException>(() =>
            new LifeEstimate(new Foil(Make.Mm(0.1)), 1, exposure, Utilisation.FromFraction(0.8), [])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unlimited_life_has_no_duration_and_is_the_longest()
    {
        Assert.Contains("Ask IsUnlimited first", Assert.Throws<InvalidOperationException>(static () => Lifetime.Unlimited.Duration).Message, StringComparison.Ordinal);
        Assert.True(Lifetime.Unlimited > Lifetime.Of(Duration.FromYears365(1e6)));
        Assert.Equal("unlimited", Lifetime.Unlimited.ToString());
    }

    private static PowerLawLoss Power(LossCase given) => new(TimeExponent.FromValue(given.Exponent));

    private static ILossLaw[] Laws(LossCase given) => [LinearLoss.Law, Power(given), PowerLawLoss.ZincMean, PowerLawLoss.ZincUpper];
}
