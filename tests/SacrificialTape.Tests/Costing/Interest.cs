using FsCheck.Xunit;

namespace SacrificialTape.Tests.Costing;

[Properties(Arbitrary = [typeof(CostCases)], MaxTest = 500)]
public sealed class Interest
{
    [Property]
    public void The_series_is_the_sum_of_its_payments(RateCase given)
    {
        // Independent: each payment discounted by repeated division in decimal, then summed.
        int years = (int)Math.Ceiling(given.Years);
        TimeValue value = (given with { Years = years }).Value;
        decimal grown = 1 + (decimal)given.Rate;
        decimal worth = 1;
        decimal sum = 0;
        for (int year = 1; year <= years; year++)
        {
            worth /= grown;
            sum += worth;
        }

        Near.Equal((double)worth, value.SinglePaymentFactor, 1e-12);
        Near.Equal((double)sum, value.SeriesFactor, 1e-12);
        Near.Equal((double)(1 / sum), value.CapitalRecoveryFactor, 1e-12);
    }

    [Fact]
    public void At_a_rate_lost_in_rounding_the_series_is_the_count_of_its_payments()
    {
        // The limit of (1 - (1 + i)^-n)/i as i goes to 0 is n.
        foreach (double rate in new[] { 1e-17, 1e-18, 1e-30 })
        {
            TimeValue value = new RateCase(rate, 5).Value;
            Near.Equal(5, value.SeriesFactor, 1e-14);
            Near.Equal(0.2, value.CapitalRecoveryFactor, 1e-14);
        }
    }

    [Property]
    public void Capital_recovery_is_the_inverse_of_series_present_worth(RateCase given)
    {
        Near.Equal(1, given.Value.CapitalRecoveryFactor * given.Value.SeriesFactor, 1e-13);
        Money back = given.Value.PresentWorthOfSeries(given.Value.EquivalentAnnualCost(new Money(1234.56m, "EUR")));
        Near.Equal(1234.56, (double)back.Amount, 1e-13);
    }

    [Property]
    public void Present_worth_falls_with_rate_and_time(RateCase given)
    {
        RateCase dearer = given with { Rate = given.Rate + 0.01 };
        Assert.True(dearer.Value.SinglePaymentFactor < given.Value.SinglePaymentFactor);
        Assert.True(dearer.Value.SeriesFactor < given.Value.SeriesFactor);
        Assert.True(dearer.Value.CapitalRecoveryFactor > given.Value.CapitalRecoveryFactor);
        RateCase longer = given with { Years = given.Years + 1 };
        Assert.True(longer.Value.SeriesFactor > given.Value.SeriesFactor);
        if (given.Rate > 0)
        {
            Assert.True(longer.Value.SinglePaymentFactor < given.Value.SinglePaymentFactor);
        }
        else if (given.Rate == 0)
        {
            Assert.Equal(1, longer.Value.SinglePaymentFactor);
        }
    }

    [Property]
    public void Two_waits_one_after_the_other_are_one_long_wait(RateCase given, byte more)
    {
        double second = 0.5 + more;
        double one = given.Value.SinglePaymentFactor;
        double two = (given with { Years = second }).Value.SinglePaymentFactor;
        Near.Equal((given with { Years = given.Years + second }).Value.SinglePaymentFactor, one * two, 1e-12);
    }

    [Property]
    public void At_no_rate_time_costs_nothing_and_a_small_rate_comes_close(RateCase given)
    {
        TimeValue none = (given with { Rate = 0 }).Value;
        Assert.Equal((1.0, given.Years, 1 / given.Years), (none.SinglePaymentFactor, none.SeriesFactor, none.CapitalRecoveryFactor));
        foreach (double small in new[] { 1e-6, -1e-6, 1e-9, -1e-9, 1e-12, 1e-15, 1e-17 })
        {
            // The next term of the series in i: n (1 - (n + 1) i / 2 + (n + 1)(n + 2) i^2 / 6 - ...).
            double n = given.Years;
            double expected = n * (1 - ((n + 1) * small / 2) + ((n + 1) * (n + 2) * small * small / 6));
            Near.Equal(expected, (given with { Rate = small }).Value.SeriesFactor, 5e-13);
        }
    }

    [Property]
    public void For_ever_is_now_plus_for_ever_later(RateCase given)
    {
        RateCase positive = given with { Rate = Math.Abs(given.Rate) + 0.005 };
        Money cost = new(1000, "EUR");
        double forEver = (double)positive.Value.PresentWorthOfReplacementForEver(cost).Amount;
        Near.Equal(1000 + (forEver * positive.Value.SinglePaymentFactor), forEver, 1e-12);

        // The yearly cost of buying for ever is that of one life.
        Near.Equal(forEver * positive.Rate, (double)positive.Value.EquivalentAnnualCost(cost).Amount, 1e-12);
    }

    [Property]
    public void A_very_long_time_comes_close_to_one_without_end(RateCase given)
    {
        double rate = Math.Abs(given.Rate) + 0.01;
        TimeValue endless = new(DiscountRate.FromFractionPerYear(rate), Lifetime.Unlimited);
        TimeValue longest = new RateCase(rate, 10_000).Value;
        Assert.Equal((0.0, 1 / rate, rate), (endless.SinglePaymentFactor, endless.SeriesFactor, endless.CapitalRecoveryFactor));
        Near.Equal(endless.SeriesFactor, longest.SeriesFactor, 1e-14);
        Assert.Equal(new Money(70, "EUR"), endless.PresentWorthOfReplacementForEver(new Money(70, "EUR")));
    }

    [Property]
    public void Present_worth_is_additive_and_scales(RateCase given, ushort one, ushort two)
    {
        Money a = new(one / 100m, "EUR");
        Money b = new(two / 100m, "EUR");
        Assert.Equal(given.Value.PresentWorth(a + b), given.Value.PresentWorth(a) + given.Value.PresentWorth(b));
        Assert.Equal(given.Value.PresentWorth(a * 3), given.Value.PresentWorth(a) * 3);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(1)]
    [InlineData(-1)]
    [InlineData(-1.5)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_rate_that_is_none(double rate) => Errors.Refused(
        () => DiscountRate.FromFractionPerYear(rate), "value", "write 0.05 for 5 %", "more than -1 and less than 1");

    [Fact]
    public void A_time_that_is_none()
    {
        DiscountRate rate = DiscountRate.FromFractionPerYear(0.05);
        Errors.Refused(() => new TimeValue(rate, Lifetime.Of(Duration.Zero)), "time", "0 a", "more than 0 and at most 10000 a");
        Errors.Refused(static () => DiscountRate.FromFractionPerYear(5), "value", "5 is outside the accepted range: more than -1 and less than 1 (a fraction of 1 per year; write 0.05 for 5 %)");
        Errors.Refused(static () => new TimeValue(DiscountRate.FromFractionPerYear(0), Lifetime.Unlimited), "rate", "more than 0 per year (for a time without end)");
        Assert.Throws<InvalidOperationException>(() => new TimeValue(default, Lifetime.Of(Duration.FromYears365(1))));
        Assert.Throws<InvalidOperationException>(() => new TimeValue(rate, default));
        Assert.Contains("unless the discount rate is above 0", Assert.Throws<InvalidOperationException>(
            static () => new RateCase(0, 10).Value.PresentWorthOfReplacementForEver(new Money(1, "EUR"))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_factor_too_large_for_money_says_so() => Assert.Contains("too large for an amount of money", Assert.Throws<OverflowException>(
        static () => new RateCase(-0.99, 1000).Value.PresentWorth(new Money(1, "EUR"))).Message, StringComparison.Ordinal);
}
