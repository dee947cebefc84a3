using FsCheck.Xunit;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.TakeOff;

/// <summary>Spare part by part: each counted, together the contingency, and the ledger closes to the micrometre.</summary>
[Properties(Arbitrary = [typeof(Cases)], MaxTest = 200)]
public sealed class SpareByPart
{
    [Property]
    public void Parts_are_counted_and_the_ledger_closes(CutCase given, byte repairs, byte trialM)
    {
        StripTakeOff plain = Cutting.TakeOff(given);
        Strip[] strips = [.. Cutting.Strips(given)];
        var spare = new Spare(Contingency.FromFraction(given.Contingency), Length.FromMeters(trialM / 10.0), Contingency.FromFraction(repairs / 400.0));
        StockTakeOff stock = StripTakeOff.Of(strips, new TakeOffChoices(Mm(given.SpliceMm), Mm(given.ShortestMm), spare)).Stocks.Single();
        StripLedger ledger = stock.Ledger;
        long needed = ledger.NeededUm;
        Assert.Equal(plain.Stocks[0].Ledger.NeededUm, needed);
        long[] parts = [.. Enum.GetValues<SparePart>().Select(part => (long)Math.Round(ledger.SpareFor(part).Micrometers))];
        Assert.Equal([0, (long)Math.Round(needed * given.Contingency), trialM * 100_000L, (long)Math.Round(needed * (repairs / 400.0))], parts);
        Assert.Equal(ledger.ContingencyUm, parts.Sum());
        Assert.Equal(ledger.BoughtUm, needed + ledger.SpliceUm + parts.Sum() + ledger.OffcutUm);
        Assert.Equal(ledger.ContingencyUm, stock.PlanCuts().Patterns.Sum(static pattern => pattern.SpareUm * pattern.Times));
        Assert.True(stock.Rolls >= StripTakeOff.Of(strips, Make.TakeOff(given.Contingency, given.SpliceMm, given.ShortestMm)).Stocks[0].Rolls);
    }

    [Fact]
    public void One_share_is_not_divided()
    {
        StripLedger ledger = StripTakeOff.Of([new Strip(Stock(), Mm(1000), 10, StripPurpose.Ring, false, Mm(900), Mm(50))], Make.TakeOff()).Stocks[0].Ledger;
        Assert.Equal(0.5, ledger.SpareFor(SparePart.Undivided).Meters);
        Assert.Equal(0, ledger.SpareFor(SparePart.Spoilage).Meters);
        Assert.Equal(ledger.Contingency.Meters, ledger.SpareFor(SparePart.Undivided).Meters);
        Assert.False(Make.TakeOff().Spare.IsDivided);
        Assert.Equal("contingency 0.05", Make.TakeOff().Spare.ToString());
    }

    [Fact]
    public void Trial_wraps_are_set_aside_of_each_stock()
    {
        var spare = new Spare(Contingency.FromFraction(0), Mm(2500), Contingency.FromFraction(0));
        StripTakeOff takeOff = StripTakeOff.Of(
            [new Strip(Stock(), Mm(1000), 10, StripPurpose.Ring, false, Mm(900), Mm(50)), new Strip(Stock(50), Mm(1000), 1, StripPurpose.Ring, false, Mm(900), Mm(50))],
            TakeOffChoices.FromRules(RuleSet.Default, spare));
        Assert.All(takeOff.Stocks, static stock => Assert.Equal(2.5, stock.Ledger.SpareFor(SparePart.TrialWraps).Meters));
        Assert.Equal("spoilage 0, trial wraps 2500 mm of each stock, repair stock 0", spare.ToString());
    }

    [Fact]
    public void Bad_parts_are_refused()
    {
        Errors.Refused(static () => new Spare(Contingency.FromFraction(0.6), Mm(0), Contingency.FromFraction(0.4)), "value", "1", "less than 1");
        Errors.Refused(static () => new Spare(Contingency.FromFraction(0.1), Mm(-1), Contingency.FromFraction(0.1)), "trialWraps", "-1 mm", "at least 0");
        Assert.Throws<InvalidOperationException>(static () => new Spare(default, Mm(1), Contingency.FromFraction(0)));
        Assert.Throws<InvalidOperationException>(static () => Spare.Undivided(default));
        StripLedger ledger = StripTakeOff.Of([new Strip(Stock(), Mm(1000), 1, StripPurpose.Ring, false, Mm(900), Mm(50))], Make.TakeOff()).Stocks[0].Ledger;
        Errors.Refused(() => ledger.SpareFor((SparePart)99), "part", "Not a part");
        var vast = new Spare(Contingency.FromFraction(0), Length.FromKilometers(1000), Contingency.FromFraction(0));
        Errors.Refused(() => StripTakeOff.Of([new Strip(Stock(100, 0.05), Mm(10), 1, StripPurpose.Ring, false, Mm(9), Mm(0))], new TakeOffChoices(Mm(1), Mm(20), vast)), "choices", "rolls of spare");
    }
}
