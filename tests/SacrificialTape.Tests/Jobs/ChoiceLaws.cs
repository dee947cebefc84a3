using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>A choice against a search by brute force that goes another way, and the laws that any choice must keep.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 60)]
public sealed class ChoiceLaws
{
    private static int Nothing;
    private static int Something;

    [Property]
    public void No_other_way_is_cheaper(ChoiceCase given)
    {
        TapeChoice choice = Choosing.Choice(given);
        var found = ByBruteForce(given).ToDictionary(static one => one.What, static one => one.Cost);
        Assert.Equal(found.Keys.Order(), choice.Accepted.Select(What).Order());

        // The search adds up in doubles: the last digits may differ.
        Assert.All(choice.Accepted, one => Near.Equal(found[What(one)], (double)one.Cost.Amount, 1e-12));
        if (found.Count == 0)
        {
            Interlocked.Increment(ref Nothing);
            Assert.Null(choice.Best);
        }
        else
        {
            Interlocked.Increment(ref Something);
            Near.Equal(found.Values.Min(), (double)choice.Best!.Cost.Amount, 1e-12);
        }

        int combinations = choice.Options.Stocks.Count * choice.Options.LeastLaps.Count * choice.Options.Passes.Count * choice.Options.Makers.Count;
        Assert.Equal(combinations, choice.Accepted.Count + choice.Rejected.Count);
    }

    [Fact]
    public void The_cases_find_something_and_find_nothing()
    {
        var random = new Random(1);
        for (int i = 0; i < 40; i++)
        {
            this.No_other_way_is_cheaper(new ChoiceCase(
                168.3, 3000 + random.Next(3000), i % 2 == 0 ? 5 : 60, CorrosivityCategory.C4, [(0.1, 100, 30), (0.05, 50, 25)], [10, 20], i));
        }

        Assert.True(Something > 0 && Nothing > 0, $"{Something} and {Nothing}");
    }

    [Property]
    public void Each_rejection_has_its_reason(ChoiceCase given)
    {
        TapeChoice choice = Choosing.Choice(given);
        Assert.All(choice.Rejected, static one => Assert.True(
            one.Error is null
                ? one.Findings.Count > 0 && one.Findings.All(static finding => finding.Severity >= Severity.Warning)
                : one.Findings.Count == 0 && one.Error.Length > 0));
        Assert.All(choice.Accepted, one =>
        {
            Assert.DoesNotContain(one.Findings, static finding => finding.Severity >= Severity.Warning);
            Assert.True(one.Life.Earliest.IsUnlimited || one.Life.Earliest.Duration.Years365 >= given.Years * (1 - 1e-9));
            Assert.Equal(one.Cost, one.RollCost + one.LabourCost + one.WasteCost + one.OtherCost);
        });
        Assert.All(choice.Accepted.Zip(choice.Accepted.Skip(1)), static pair => Assert.True(pair.First.Cost <= pair.Second.Cost));
    }

    [Property]
    public void One_more_stock_never_makes_it_dearer(ChoiceCase given, ChoiceCase other, bool byShare)
    {
        RollCounting rolls = byShare ? RollCounting.ByShare : RollCounting.Whole;
        StripStock[] more = [.. Choosing.StocksOf(given).Concat(Choosing.StocksOf(other)).Distinct()];
        AcceptedLay? few = Choosing.Choice(given, rolls).Best;
        AcceptedLay? many = Choosing.Choice(given, rolls, stocks: more).Best;
        Assert.True(few is null || many!.Cost <= few.Cost);
    }

    [Property]
    public void Tighter_rules_never_make_it_cheaper(ChoiceCase given, byte by)
    {
        Basis basis = Basis.OwnExperience("made up");
        RuleSet rules = RuleSet.Default;
        (string Id, double Factor)[] tighter =
        [
            (RuleIds.MinimumLap, 1 + (by / 100.0)), (RuleIds.UsableFraction, 1 - (by / 600.0)), (RuleIds.MaximumSpiralAngle, 1 - (by / 300.0)), (RuleIds.MinimumWrapDiameter, 1 + by),
        ];
        foreach ((string id, double factor) in tighter)
        {
            Measure limit = rules[id].Limit!.Value;
            rules = rules.With("tighter", "1", rules[id].WithLimit(new Measure(limit.Number * factor, limit.Unit), basis));
        }

        TapeChoice loose = Choosing.Choice(given);
        TapeChoice tight = Choosing.Choice(given, rules: rules);
        Assert.True(tight.Best is null || loose.Best!.Cost <= tight.Best.Cost);
        Assert.Empty(tight.Accepted.Select(What).Except(loose.Accepted.Select(What)));
    }

    [Property]
    public void The_order_of_what_is_given_does_not_matter(ChoiceCase given, bool byShare)
    {
        var random = new Random(given.Seed);
        ChoiceOptions one = Choosing.Options(given, byShare ? RollCounting.ByShare : RollCounting.Whole);
        var other = new ChoiceOptions(
            Shuffled(one.Stocks.Concat(one.Stocks)),
            Shuffled(one.LeastLaps.Concat(one.LeastLaps.Select(static lap => Length.FromMeters(lap.Meters)))),
            Shuffled([2, 1, 2]),
            Shuffled(one.Makers),
            new CostPrices(Shuffled(one.Prices.Rolls), one.Prices.Labour, Shuffled(one.Prices.Norms), one.Prices.Access, one.Prices.Consumables, one.Prices.Waste),
            one.TakeOff,
            one.LayChoices,
            one.RollCounting);
        LineNeeds needs = Choosing.Needs(given);
        TapeChoice first = TapeChoice.Among(needs, one);
        TapeChoice second = TapeChoice.Among(needs, other);
        Assert.Equal(first.Accepted.Select(static lay => lay.ToString()), second.Accepted.Select(static lay => lay.ToString()));
        Assert.Equal(first.Rejected.Select(static lay => lay.ToString()), second.Rejected.Select(static lay => lay.ToString()));

        ValueList<T> Shuffled<T>(IEnumerable<T> items) => new(items.OrderBy(_ => random.Next()).ToArray());
    }

    [Property]
    public void Whole_rolls_are_never_cheaper_than_their_share(ChoiceCase given)
    {
        var shares = Choosing.Choice(given, RollCounting.ByShare).Accepted.ToDictionary(What);
        TapeChoice whole = Choosing.Choice(given);
        Assert.Equal(shares.Count, whole.Accepted.Count);
        Assert.All(whole.Accepted, one =>
        {
            AcceptedLay share = shares[What(one)];
            Assert.True(share.RollCost <= one.RollCost && share.WasteCost <= one.WasteCost);
            Assert.Equal((one.LabourCost, one.OtherCost), (share.LabourCost, share.OtherCost));

            // By the cut list: what is used, and what is too short to keep.
            StockTakeOff stock = one.TakeOff.Stocks.Single();
            decimal paid = stock.PlanCuts().Patterns.Sum(static pattern => pattern.Times * (decimal)(pattern.Remnant.Meters >= 1 ? pattern.RollLength.Meters - pattern.Remnant.Meters : pattern.RollLength.Meters));
            Near.Equal((double)(one.RollCost.Amount / stock.Rolls * paid) / stock.Stock.RollLength.Meters, (double)share.RollCost.Amount, 1e-9);
        });
    }

    private static string What(AcceptedLay lay) => FormattableString.Invariant(
        $"{lay.Tried.Maker}|{lay.Tried.Passes}|{lay.Tried.LeastLap.Millimeters:0.###}|{lay.Tried.Stock}");

    // Every combination laid by hand and taken through a whole job of its own; what cannot be laid is left out.
    private static IEnumerable<(string What, double Cost)> ByBruteForce(ChoiceCase given)
    {
        StraightPipe pipe = Choosing.PipeOf(given);
        LineNeeds needs = Choosing.Needs(given);
        CostPrices prices = Choosing.Prices(given, Choosing.StocksOf(given));
        foreach (StripStock stock in Choosing.StocksOf(given))
        {
            foreach (double lap in given.LapsMm.Distinct())
            {
                for (int passes = 1; passes <= 2; passes++)
                {
                    LayChoices choices = Choices(2, 10, passes);
                    (string Name, StripPurpose Kind, Func<ILay> Lay)[] kinds =
                    [
                        ("rings", StripPurpose.Ring, () => new RingLay(pipe, stock, Mm(lap), choices)),
                        ("strips along", StripPurpose.AlongPipe, () => new AlongPipeLay(pipe, stock, Mm(lap), choices)),
                        ("spiral, ends trimmed flush", StripPurpose.Spiral, () => new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Mm(lap)), null, choices)),
                        ("spiral, 1 level turn(s) at each end", StripPurpose.Spiral, () => new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Mm(lap)), SpiralEnds.LevelTurns(), choices)),
                    ];
                    foreach ((string name, StripPurpose kind, Func<ILay> lay) in kinds)
                    {
                        JobEstimate estimate;
                        try
                        {
                            estimate = new Job("brute", [needs.With(lay())], Make.TakeOff()).Estimate();
                        }
                        catch (ArgumentOutOfRangeException)
                        {
                            continue;
                        }

                        if (estimate.Findings.Any(static finding => finding.Severity >= Severity.Warning))
                        {
                            continue;
                        }

                        StockTakeOff rolls = estimate.TakeOff.Stocks.Single();
                        decimal roll = prices.Rolls.Single(price => price.Stock == stock).PerRoll.Amount;
                        double strip = estimate.StripLength.Meters;
                        int pieces = estimate.Lines[0].Strips.Sum(static one => one.Count);
                        double minutes = kind switch
                        {
                            StripPurpose.Ring => 3 * pieces,
                            StripPurpose.AlongPipe => 0.7 * strip,
                            _ => (0.5 * strip) + (12 * pipe.Area.SquareMeters),
                        };
                        double waste = (rolls.Ledger.Trim.Meters + rolls.Ledger.Offcut.Meters) * stock.Width.Meters * stock.Tape.Foil.Thickness.Meters * 7140 * 0.9;
                        double cost = (rolls.Rolls * (double)roll) + 20 + (minutes / 60 * 45) + (1.5 * pipe.Area.SquareMeters) + waste;
                        yield return (FormattableString.Invariant($"{name}|{passes}|{lap:0.###}|{stock}"), cost);
                    }
                }
            }
        }
    }
}
