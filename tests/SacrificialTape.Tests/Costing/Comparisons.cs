using FsCheck.Xunit;

namespace SacrificialTape.Tests.Costing;

[Properties(Arbitrary = [typeof(CostCases)], MaxTest = 400)]
public sealed class Comparisons
{
    [Property]
    public void Present_worth_is_that_of_every_payment_on_its_day(OptionCase given)
    {
        // Independent: walk through the study payment by payment, each discounted on its own.
        RankedOption ranked = given.Priced(given.Make(later: given.Upkeep()));
        double Worth(double years) => Math.Pow(1 + given.Rate, -years);
        double Walk(double life)
        {
            double sum = (double)given.FirstCost;
            for (int k = 1; life * k < given.StudyYears - 1e-6; k++)
            {
                sum += (double)given.FirstCost * Worth(life * k);
            }

            for (int year = given.Interval; year < given.StudyYears; year += given.Interval)
            {
                sum += (double)given.Later * Worth(year);
            }

            for (int year = 1; year <= given.StudyYears; year++)
            {
                sum += (double)given.Later / 4 * Worth(year);
            }

            return sum + (given.Interval <= given.StudyYears ? (double)given.Later / 2 * Worth(given.Interval) : 0);
        }

        double series = Enumerable.Range(1, given.StudyYears).Sum(year => Worth(year));
        foreach (OptionCost cost in new[] { ranked.AtEarliestLife, ranked.AtLatestLife })
        {
            double expected = Walk(cost.Life.Duration.Years365);
            Near.Equal(expected, (double)cost.PresentWorth.Amount, 1e-10);
            Near.Equal(expected / series / given.AreaM2, (double)cost.PerSquareMeterAndYear.Amount, 1e-10);
        }
    }

    [Property]
    public void Over_whole_lives_the_annual_cost_is_that_of_one_life(OptionCase given, byte lives)
    {
        int times = 1 + (lives % 8);
        double life = Math.Ceiling(given.Earliest);
        CostOption option = (given with { Earliest = life, Latest = life }).Make();
        OptionCost cost = new CostComparison([option], Duration.FromYears365(life * times), given.Discount).Ranking[0].AtEarliestLife;
        Assert.Equal(times, cost.Purchases);
        TimeValue one = new(given.Discount, Lifetime.Of(Duration.FromYears365(life)));
        Near.Equal((double)one.EquivalentAnnualCost(option.FirstCost).Amount / given.AreaM2, (double)cost.PerSquareMeterAndYear.Amount, 1e-11);
    }

    [Property]
    public void A_longer_life_never_costs_more(OptionCase given)
    {
        RankedOption ranked = given.Priced(given.Make(later: given.Upkeep()));
        Assert.True(ranked.AtLatestLife.Purchases <= ranked.AtEarliestLife.Purchases);
        Assert.True((double)ranked.AtLatestLife.PerSquareMeterAndYear.Amount <= (double)ranked.AtEarliestLife.PerSquareMeterAndYear.Amount * (1 + 1e-12));
    }

    [Property]
    public void Cost_scales_with_amounts_and_falls_with_area(OptionCase given)
    {
        double one = (double)given.Priced(given.Make(later: given.Upkeep())).AtEarliestLife.PerSquareMeterAndYear.Amount;
        double three = (double)given.Priced(given.Make(factor: 3, later: given.Upkeep(3))).AtEarliestLife.PerSquareMeterAndYear.Amount;
        OptionCase wide = given with { AreaM2 = given.AreaM2 * 2 };
        Near.Equal(3 * one, three, 1e-12);
        Near.Equal(one / 2, (double)wide.Priced(wide.Make(later: wide.Upkeep())).AtEarliestLife.PerSquareMeterAndYear.Amount, 1e-12);
    }

    [Property]
    public void The_order_of_later_costs_and_of_options_does_not_matter(OptionCase given, OptionCase other)
    {
        ICostItem[] upkeep = given.Upkeep();
        Near.Equal(
            (double)given.Priced(given.Make(later: upkeep)).AtEarliestLife.PresentWorth.Amount,
            (double)given.Priced(given.Make(later: [.. upkeep.Reverse()])).AtEarliestLife.PresentWorth.Amount,
            1e-14);
        CostOption a = given.Make("a");
        CostOption b = other.Make("b");
        CostOption c = other.Make("c", 1.5m);
        var one = new CostComparison([a, b, c], given.Study, given.Discount);
        var two = new CostComparison([c, b, a], given.Study, given.Discount);
        Assert.Equal(one.Ranking.Select(Seen), two.Ranking.Select(Seen));
        Assert.Equal(1, one.Ranking[0].Rank);
        for (int i = 1; i < 3; i++)
        {
            RankedOption before = one.Ranking[i - 1];
            RankedOption here = one.Ranking[i];
            bool tied = before.Rank == here.Rank;
            Assert.True(tied ? here.IsTied && before.IsTied : here.Rank == i + 1);
            Assert.True(tied || before.AtEarliestLife.PerSquareMeterAndYear < here.AtEarliestLife.PerSquareMeterAndYear);
        }

        static (int, string, bool, bool) Seen(RankedOption one) => (one.Rank, one.Option.Name, one.IsTied, one.OverlapsBest);
    }

    [Fact]
    public void Ties_share_a_place_and_the_next_is_skipped()
    {
        // 100 every 10 years and 200 every 20 come to the same at no rate; 300 for 20 is dearer.
        CostComparison comparison = new(
            [Option("dear", 300, 20, 20), Option("twice", 200, 20, 20), Option("once", 100, 10, 10)],
            Duration.FromYears365(20),
            DiscountRate.FromFractionPerYear(0));
        Assert.Equal([(1, "once", true), (1, "twice", true), (3, "dear", false)], comparison.Ranking.Select(static one => (one.Rank, one.Option.Name, one.IsTied)));
        Assert.Equal(new Money(10, "EUR"), comparison.Ranking[0].AtEarliestLife.PerSquareMeterAndYear);
        Assert.Equal(new Money(15, "EUR"), comparison.Ranking[2].AtEarliestLife.PerSquareMeterAndYear);
        Assert.False(comparison.IsDecided);
        Assert.False(comparison.Ranking[2].OverlapsBest);
    }

    [Fact]
    public void Ranges_that_overlap_do_not_decide()
    {
        // a: 10 to 5 a year; b: 12 to 8 a year; c: 20 whatever happens.
        CostComparison comparison = new(
            [Option("c", 400, 20, 20), Option("b", 240, 20, 30), Option("a", 100, 10, 20)],
            Duration.FromYears365(20),
            DiscountRate.FromFractionPerYear(0));
        Assert.Equal(["a", "b", "c"], comparison.Ranking.Select(static one => one.Option.Name));
        Assert.Equal([true, false, false], comparison.Ranking.Select(static one => one.OverlapsBest));
        Assert.True(comparison.IsDecided);
        CostComparison closer = new(
            [Option("b", 120, 10, 20), Option("a", 100, 10, 20)], Duration.FromYears365(20), DiscountRate.FromFractionPerYear(0));
        Assert.Equal([true, true], closer.Ranking.Select(static one => one.OverlapsBest));
        Assert.False(closer.IsDecided);
        Assert.Contains("range overlaps that of the best", closer.ToString(), StringComparison.Ordinal);
        Assert.Contains("lasting 10 a, bought 2 time(s) in 20 a, present worth 200.00 EUR, 10.00 EUR per m2 and year", closer.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_unlimited_life_is_bought_once()
    {
        CostOption option = new("for ever", Area.FromSquareMeters(1), new Money(100, "EUR"), Lifetime.Of(Duration.FromYears365(25)), Lifetime.Unlimited);
        RankedOption ranked = new CostComparison([option], Duration.FromYears365(50), DiscountRate.FromFractionPerYear(0)).Ranking[0];
        Assert.Equal((2, 1), ((int)ranked.AtEarliestLife.Purchases, (int)ranked.AtLatestLife.Purchases));
        Assert.Equal(new Money(2, "EUR"), ranked.AtLatestLife.PerSquareMeterAndYear);
    }

    [Fact]
    public void A_life_that_ends_with_the_study_is_not_followed_by_another_however_it_was_divided()
    {
        // 3 x 0.1 is not 0.3 in doubles: the end must not gain a purchase by it.
        CostOption option = Option("short", 100, 0.1, 0.1);
        Assert.Equal(3, new CostComparison([option], Duration.FromYears365(0.3), DiscountRate.FromFractionPerYear(0.05)).Ranking[0].AtEarliestLife.Purchases);
    }

    [Fact]
    public void Later_payments_on_the_last_day_are_made_only_if_they_say_so()
    {
        Money Total(CostTiming timing) => new CostComparison(
            [new CostOption("x", Area.FromSquareMeters(1), new Money(0, "EUR"), Lifetime.Unlimited, Lifetime.Unlimited, [new CostItem("y", new Money(1, "EUR"), timing)])],
            Duration.FromYears365(20),
            DiscountRate.FromFractionPerYear(0)).Ranking[0].AtEarliestLife.PresentWorth;
        Assert.Equal(new Money(4, "EUR"), Total(CostTiming.Every(Duration.FromYears365(5), true)));
        Assert.Equal(new Money(3, "EUR"), Total(CostTiming.Every(Duration.FromYears365(5), false)));
        Assert.Equal(new Money(20, "EUR"), Total(CostTiming.Yearly));
        Assert.Equal(new Money(1, "EUR"), Total(CostTiming.After(Duration.FromYears365(20))));
        Assert.Equal(new Money(0, "EUR"), Total(CostTiming.After(Duration.FromYears365(21))));
        Assert.Equal(new Money(0, "EUR"), Total(CostTiming.Every(Duration.FromYears365(30), true)));
        Assert.Equal(new Money(1, "EUR"), Total(CostTiming.AtStart));
    }

    [Fact]
    public void An_option_takes_cost_and_life_from_estimates()
    {
        var exposure = ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(1), CorrosionRate.FromMicrometersPerYear(2), "invented");
        LifeEstimate life = new(new Foil(Make.Mm(0.1)), 1, exposure, Utilisation.FromFraction(0.8), [LinearLoss.Law]);
        CostOption option = new("tape", PricedJob.Full(), life);
        Near.Equal(0.8 * 100 / 2, option.EarliestLife.Duration.Years365, 1e-14);
        Near.Equal(0.8 * 100 / 1, option.LatestLife.Duration.Years365, 1e-14);
        Assert.Equal(PricedJob.Full().FirstCost, option.FirstCost);
        Assert.Equal(["inspection"], option.Later.Select(static item => item.Name));
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        DiscountRate rate = DiscountRate.FromFractionPerYear(0.05);
        Duration study = Duration.FromYears365(20);
        Errors.Refused(static () => Option("a", 1, 0, 5), "earliestLife", "0 a", "at least 0.01 a");
        Errors.Refused(static () => Option("a", 1, 10, 5), "latestLife", "5 a is shorter than the earliest life, 10 a");
        Errors.Refused(static () => Option("a", -1, 5, 5), "firstCost", "-1 EUR", "at least 0 EUR");
        Errors.Refused(() => new CostComparison([Option("a", 1, 5, 5)], Duration.Zero, rate), "studyPeriod", "0 a", "more than 0");
        Assert.Throws<InvalidOperationException>(() => new CostComparison([Option("a", 1, 5, 5)], study, default));
        Said("at least one option", () => new CostComparison([], study, rate));
        Said("Two options are named 'a'", () => new CostComparison([Option("a", 1, 5, 5), Option("a", 2, 5, 5)], study, rate));
        Said("EUR and USD cannot be mixed", () => new CostComparison([Option("a", 1, 5, 5), Option("b", 2, 5, 5, "USD")], study, rate));
        Said("EUR and USD cannot be mixed", static () => new CostOption(
            "a", Area.FromSquareMeters(1), new Money(1, "EUR"), Lifetime.Unlimited, Lifetime.Unlimited, [new CostItem("y", new Money(1, "USD"), CostTiming.Yearly)]));
    }

    private static CostOption Option(string name, decimal cost, double earliest, double latest, string currency = "EUR") => new(
        name,
        Area.FromSquareMeters(1),
        new Money(cost, currency),
        Lifetime.Of(Duration.FromYears365(earliest)),
        Lifetime.Of(Duration.FromYears365(latest)));

    private static void Said(string text, Func<object> make) =>
        Assert.Contains(text, Assert.Throws<ArgumentException>(() => { _ = make(); }).Message, StringComparison.Ordinal);
}
