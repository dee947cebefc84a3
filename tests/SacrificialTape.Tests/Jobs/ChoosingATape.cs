using static SacrificialTape.Tests.Jobs.Choosing;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Jobs;

/// <summary>Choices small enough to follow by hand, their reasons, and what is refused.</summary>
public sealed class ChoosingATape
{
    private static readonly LabourKind Ring = new(StripPurpose.Ring, ApplicationMethod.ByHand, "pipe");
    private static readonly StraightPipe OneMetre = Pipe(1000 / Math.PI, 1000);

    [Fact]
    public void The_cheapest_by_hand()
    {
        // Circumference 1 m, length 1 m, lap 20 mm, end lap 10 mm; no spare. 100 mm: ceil(980/80) = 13 rings of 1.01 m,
        // 13.13 m, 2 rolls of 10 m at 40: 80, and 13 x 3 min at 45 an hour: 29.25. 50 mm: ceil(980/30) = 33 rings,
        // 33.33 m; 9 whole rings to a roll: 4 rolls at 22: 88, and 74.25 of labour.
        TapeChoice choice = TapeChoice.Among(Needs(), Options([Stock(100, 10), Stock(50, 10)], [(Stock(100, 10), 40), (Stock(50, 10), 22)]));
        Assert.Equal([109.25m, 162.25m], choice.Accepted.Select(static one => one.Cost.Amount));
        Assert.Equal(80m, choice.Best!.RollCost.Amount);
        Assert.Equal(29.25m, choice.Best.LabourCost.Amount);
        Assert.Equal(0m, choice.Best.WasteCost.Amount);
        Assert.StartsWith("0.1 x 100 mm, rolls of 10 m, rings, lap 20 mm, 1 pass(es): 109.25 EUR, 2 roll(s), 38.1 a to ", choice.Best.ToString(), StringComparison.Ordinal);
        Assert.Equal(13, choice.Best.Pieces);
        Assert.EndsWith("; 2 accepted, 0 rejected", choice.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void By_share_only_scrap_is_paid()
    {
        // 9 rings of 1.01 m leave 0.91 m of the first roll, shorter than a metre: scrap. 4 rings leave 5.96 m: kept.
        TapeChoice choice = TapeChoice.Among(Needs(), Options([Stock(100, 10)], [(Stock(100, 10), 40)], rolls: RollCounting.ByShare));
        Assert.Equal(40m + (40m * 0.404m), choice.Best!.RollCost.Amount);
    }

    [Fact]
    public void Reasons_name_rule_number_and_limit()
    {
        ChoiceOptions options = Options([Stock(100, 10), Stock(15, 10)], [(Stock(100, 10), 40), (Stock(15, 10), 8)], [5, 20]);
        TapeChoice choice = TapeChoice.Among(Needs(60), options);
        Assert.Null(choice.Best);
        Assert.Equal("nothing does", choice.ToString().Split(": ")[1].Split(';')[0]);
        RejectedLay small = choice.Rejected.Single(static one => one.Tried.LeastLap.Millimeters == 5 && one.Tried.Stock.Width.Millimeters == 15);
        Finding life = small.Findings.Single(static one => one.Rule.Id == RuleIds.LifeMayFallShort);
        Assert.Equal(new Measure(60, TradeUnit.Year), life.Limit);
        Near.Equal(80 / 2.1, life.Measured!.Value.Number, 1e-12);
        Finding lap = small.Findings.Single(static one => one.Rule.Id == RuleIds.MinimumLap);
        Assert.Equal(new Measure(10, TradeUnit.Millimeter), lap.Limit);

        // ceil(995 / 10) = 100 rings of 15 mm have 99 laps.
        Near.Equal(500 / 99.0, lap.Measured!.Value.Number, 1e-9);
        Assert.Contains("[life.may-fall-short] 38.0952 a against 60 a", small.ToString(), StringComparison.Ordinal);
        RejectedLay impossible = choice.Rejected.Single(static one => one.Tried.LeastLap.Millimeters == 20 && one.Tried.Stock.Width.Millimeters == 15);
        Assert.Empty(impossible.Findings);
        Assert.Contains("20 mm is outside the accepted range: at least 0 and less than 15 mm (less than the strip is wide)", impossible.Error, StringComparison.Ordinal);
        Assert.Contains("rings, lap 20 mm, 1 pass(es): 20 mm is outside", impossible.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_rejects_is_an_option()
    {
        ValueList<StripStock> stock = [Stock(100, 10)];
        (StripStock, decimal)[] price = [(Stock(100, 10), 40)];

        // 38 years at the earliest, over 200 at the latest: too short by the earliest only, a warning.
        Assert.Null(TapeChoice.Among(Needs(60), Options(stock, price)).Best);
        Assert.NotNull(TapeChoice.Among(Needs(60), Options(stock, price, rejectFrom: Severity.Stop)).Best);
        Assert.NotNull(TapeChoice.Among(Needs(60), Options(stock, price, accepted: [RuleIds.LifeMayFallShort])).Best);
        Assert.Null(TapeChoice.Among(Needs(300), Options(stock, price, rejectFrom: Severity.Stop)).Best);

        // Every life carries a note: nothing is left when notes reject.
        Assert.Null(TapeChoice.Among(Needs(), Options(stock, price, rejectFrom: Severity.Note)).Best);
        AcceptedLay best = TapeChoice.Among(Needs(), Options(stock, price)).Best!;
        Assert.Contains(best.Findings, static one => one.Rule.Id == RuleIds.NoPublishedLife);
    }

    // What the rate rests on is the same for every tape: it stays a finding of what is chosen, and rejects nothing.
    [Fact]
    public void A_rate_on_recalled_numbers_speaks_against_no_tape()
    {
        ValueList<StripStock> stock = [Stock(100, 10)];
        (StripStock, decimal)[] price = [(Stock(100, 10), 40)];
        var air = new AnnualAtmosphere(
            Temperature.FromDegreesCelsius(11), RelativeHumidity.FromPercent(76),
            DepositionRate.FromMilligramsPerSquareMeterDay(6), DepositionRate.FromMilligramsPerSquareMeterDay(25));
        foreach ((ZincExposure exposure, string rule) in new[]
        {
            (ZincExposure.From(FirstYearRate.From(new DoseResponse(Metal.Zinc, air))), RuleIds.RecalledRate),
            (ZincExposure.FromCategory(CorrosivityCategory.CX), RuleIds.RecalledCategory),
        })
        {
            var needs = new LineNeeds("A-1", exposure, Lifetime.Of(Duration.FromYears365(2)));
            AcceptedLay best = TapeChoice.Among(needs, Options(stock, price)).Best!;
            Assert.Contains(best.Findings, finding => finding.Rule.Id == rule && finding.Severity == Severity.Warning);
        }
    }

    [Fact]
    public void A_finding_without_numbers_says_its_title()
    {
        RejectedLay rejected = TapeChoice.Among(Needs(), Options([Stock(100, 10)], [(Stock(100, 10), 40)], rejectFrom: Severity.Note)).Rejected[0];
        Finding bare = rejected.Findings.First(static finding => finding.Measured is null && finding.Limit is null);
        Assert.Contains($"[{bare.Rule.Id}] {bare.Rule.Title}", rejected.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Among_equals_the_longer_life_comes_first_then_fewer_pieces()
    {
        // All for nothing: cost ties everywhere.
        StripStock[] stocks = [Stock(100, 10), Stock(100, 10, 0.2), Stock(150, 10, 0.2)];
        TapeChoice choice = TapeChoice.Among(Needs(), Options(new ValueList<StripStock>(stocks), [.. stocks.Select(static one => (one, 0m))], hour: 0));
        Assert.Equal([150, 100, 100], choice.Accepted.Select(static one => one.Tried.Stock.Width.Millimeters));
        Assert.Equal([0.2, 0.2, 0.1], choice.Accepted.Select(static one => Math.Round(one.Tried.Stock.Tape.Foil.Thickness.Millimeters, 3)));
    }

    [Fact]
    public void Stocks_that_differ_in_anything_have_an_order()
    {
        StripStock Of(double tolerance = 0, double density = 7140, double adhesive = 0.03, double? resistivity = null, double film = 0) => new(
            new Tape(
                new Foil(Mm(0.1), Mm(tolerance), Density.FromKilogramsPerCubicMeter(density)),
                new Adhesive(Mm(adhesive), resistivity is { } known ? ContactResistivity.FromOhmSquareCentimeters(known) : null),
                film > 0 ? new FacingFilm(Mm(film)) : null),
            Mm(100),
            Length.FromMeters(10));
        StripStock[] stocks = [Of(), Of(0.001), Of(density: 7100), Of(adhesive: 0.04), Of(resistivity: 1), Of(resistivity: 2), Of(film: 0.02), Of(film: 0.03)];
        string[] orders =
        [
            .. new[] { stocks, [.. stocks.Reverse()] }.Select(static given => string.Join(
                '\n',
                TapeChoice.Among(Needs(), Options(new ValueList<StripStock>(given), [.. given.Select(static one => (one, 0m))], rejectFrom: Severity.Stop)).Accepted
                    .Select(static one => Everything(one.Tried.Stock.Tape)))),
        ];
        Assert.Equal(8, orders[0].Split('\n').Distinct().Count());
        Assert.Equal(orders[0], orders[1]);
    }

    [Fact]
    public void Any_kind_of_lay_can_take_part()
    {
        var pipe = new InterruptedPipe(Pipe(1000 / Math.PI, 2200), [StayClear.Band(StayClearKind.FlangedJoint, Mm(100))]);
        var options = new ChoiceOptions(
            [Stock(100, 10)], [Mm(20)], [1],
            [
                LayMaker.Interrupted(pipe, static span => LayMaker.Rings(span)),
                new LayMaker("twice as many rings", pipe, Ring, (stock, lap, choices) => InterruptedLay.Of(pipe, span => new RingLay(span, stock, lap + Mm(40), choices))),
            ],
            Prices([(Stock(100, 10), 40)]), Make.TakeOff(0));
        TapeChoice choice = TapeChoice.Among(Needs(), options);
        Assert.Equal(["rings, span by span", "twice as many rings"], choice.Accepted.Select(static one => one.Tried.Maker));

        // Two spans of (2200 - 200) / 2 = 1000 mm: twice 13 rings.
        Assert.Equal(26, choice.Best!.Pieces);

        Bend bend = Bend.LongRadius(PipeSize.FromNps("6"), Angle.FromDegrees(90));
        var onBend = new ChoiceOptions(
            [Stock(40, 10), Stock(100, 10)], [Mm(10)], [1], [LayMaker.BendRings(bend)],
            Prices([(Stock(40, 10), 20), (Stock(100, 10), 40)], norm: new LabourKind(StripPurpose.Ring, ApplicationMethod.ByHand, "bend")), Make.TakeOff(0));
        TapeChoice narrow = TapeChoice.Among(Needs(), onBend);
        Assert.Equal(40, narrow.Best!.Tried.Stock.Width.Millimeters);
        Assert.Contains(narrow.Rejected.Single().Findings, static one => one.Rule.Id == RuleIds.MaximumPucker);
    }

    [Fact]
    public void Spots_welds_and_head_count_as_on_the_line()
    {
        var head = new LabourKind(StripPurpose.Spiral, ApplicationMethod.WrappingHead, "pipe");
        StripStock wide = Stock(200, 30);
        StripStock weld = Stock(50, 10);
        var needs = new LineNeeds(
            "A-1", ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(10)),
            welds: new WeldWork([new GirthWelds(Mm(1000 / Math.PI), 1)], weld, Mm(10)),
            spots: [StayClear.Spot(StayClearKind.NamePlate, Mm(180), Mm(80))]);
        ChoiceOptions Options(params (StripStock, decimal)[] prices) => new(
            [wide, Stock(100, 30)], [Mm(20)], [1], [LayMaker.Spiral(OneMetre, null, ApplicationMethod.WrappingHead)],
            Prices(prices, norm: head, measure: LabourMeasure.Area), Make.TakeOff(0));
        TapeChoice choice = TapeChoice.Among(needs, Options((wide, 100), (Stock(100, 30), 60), (weld, 5)));
        Assert.Contains(choice.Rejected.Single().Findings, static one => one.Rule.Id == RuleIds.MaximumStripWidthOnWrappingHead);
        Assert.Equal(65m, choice.Best!.RollCost.Amount);

        // 3 min for each of 1 - 0.2 x 0.1 m2.
        Near.Equal(0.98 * 3 / 60 * 45, (double)choice.Best.LabourCost.Amount, 1e-12);
        Assert.Equal(needs.Spots, choice.Best.Line.Spots);
        Assert.Contains("goes along the welds", Assert.Throws<ArgumentException>(() => TapeChoice.Among(needs, Options((wide, 100), (Stock(100, 30), 60)))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Rolls_too_short_and_spots_too_large_are_reasons_too()
    {
        TapeChoice shortRolls = TapeChoice.Among(Needs(), Options([Stock(100, 0.9)], [(Stock(100, 0.9), 4)]));
        Assert.Contains("two of the shortest pieces", shortRolls.Rejected.Single().Error, StringComparison.Ordinal);
        var needs = new LineNeeds(
            "A", ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(10)),
            spots: [StayClear.Spot(StayClearKind.NamePlate, Mm(1000), Mm(1000))]);
        Assert.Contains("the area of pipe", TapeChoice.Among(needs, Options([Stock(100, 10)], [(Stock(100, 10), 4)])).Rejected.Single().Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Needs_that_no_lay_can_meet_are_refused_before_any_is_tried()
    {
        static LineNeeds Of(double years, int layers = 1, ValueList<StayClear>? spots = null) => new(
            "A", ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(years)), layersWanted: layers, spots: spots);
        Errors.Refused(static () => Of(0), "requiredLife", "0 a is outside", "more than 0 a");
        Errors.Refused(static () => Of(10, 0), "layersWanted", "0 layers is outside");
        Assert.Equal("spots", Assert.Throws<ArgumentException>(static () => Of(10, 1, [StayClear.Band(StayClearKind.FlangedJoint, Mm(100))])).ParamName);
    }

    [Fact]
    public void Bad_options_are_refused()
    {
        ValueList<StripStock> stock = [Stock(100, 10)];
        CostPrices prices = Prices([(Stock(100, 10), 40)]);
        ChoiceOptions With(
            ValueList<StripStock>? stocks = null, ValueList<Length>? laps = null, ValueList<int>? passes = null, ValueList<ILayMaker>? makers = null,
            ValueList<string>? accepted = null, RollCounting rolls = RollCounting.Whole, Severity from = Severity.Warning) => new(
            stocks ?? stock, laps ?? [Mm(20)], passes ?? [1], makers ?? [LayMaker.Rings(OneMetre)], prices, Make.TakeOff(0), null, rolls, from, accepted);
        Assert.Contains("nothing to choose from", Assert.Throws<ArgumentException>(() => With([])).Message, StringComparison.Ordinal);
        Assert.Equal("leastLaps", Assert.Throws<ArgumentException>(() => With(laps: [])).ParamName);
        Assert.Equal("passes", Assert.Throws<ArgumentException>(() => With(passes: [])).ParamName);
        Assert.Equal("makers", Assert.Throws<ArgumentException>(() => With(makers: [])).ParamName);
        Errors.Refused(() => With(laps: [Mm(-1)]), "leastLaps", "-1 mm", "at least 0 mm");
        Errors.Refused(() => With(passes: [1, 21]), "passes", "21 passes", "at most 20 passes");
        Errors.Refused(() => With(rolls: (RollCounting)9), "rollCounting", "State Whole or ByShare");
        Errors.Refused(() => With(from: (Severity)9), "rejectFrom", "Not a severity");
        Assert.Contains("'lap.tiny'", Assert.Throws<ArgumentException>(() => With(accepted: ["lap.tiny"])).Message, StringComparison.Ordinal);
        Assert.Contains("named 'rings'", Assert.Throws<ArgumentException>(() => With(makers: [LayMaker.Rings(OneMetre), LayMaker.Rings(OneMetre)])).Message, StringComparison.Ordinal);
        Assert.Contains("compared on one surface", Assert.Throws<ArgumentException>(() => With(makers: [LayMaker.Rings(OneMetre), LayMaker.AlongPipe(Pipe())])).Message, StringComparison.Ordinal);
        Assert.Contains("No norm says how long this work takes: along pipe", Assert.Throws<ArgumentException>(() => With(makers: [LayMaker.AlongPipe(OneMetre)])).Message, StringComparison.Ordinal);
        Assert.Contains("No price is given for a roll of 0.1 x 50 mm", Assert.Throws<ArgumentException>(() => With([Stock(50, 10)])).Message, StringComparison.Ordinal);
        Assert.Contains("made 0.1 x 50 mm", Assert.Throws<InvalidOperationException>(() => TapeChoice.Among(Needs(), With(makers:
            [new LayMaker("wrong", OneMetre, Ring, static (_, lap, choices) => new RingLay(OneMetre, Stock(50, 10), lap, choices))]))).Message, StringComparison.Ordinal);
        Errors.Refused(() => With(laps: new ValueList<Length>(Enumerable.Range(0, 1_000_001).Select(static i => Mm(i)))), "stocks", "1000001 combinations");
    }

    private static string Everything(Tape tape) => FormattableString.Invariant(
        $"{tape.Foil.LeastThickness.Millimeters} {tape.Foil.Density.KilogramsPerCubicMeter} {tape.Adhesive.Thickness.Millimeters} {tape.Adhesive.ContactResistivity?.OhmSquareCentimeters} {tape.Facing?.Thickness.Millimeters}");

    private static LineNeeds Needs(double years = 10) => new("A-1", ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(years)));

    private static CostPrices Prices((StripStock Stock, decimal Roll)[] rolls, decimal hour = 45, LabourKind? norm = null, LabourMeasure measure = LabourMeasure.Pieces) => new(
        new ValueList<RollPrice>(rolls.Select(static one => new RollPrice(one.Stock, Eur(one.Roll)))),
        new LabourRate(Eur(hour)),
        [new LabourNorm(norm ?? Ring, measure, Duration.FromMinutes(3))]);

    private static ChoiceOptions Options(
        ValueList<StripStock> stocks, (StripStock Stock, decimal Roll)[] prices, double[]? laps = null, RollCounting rolls = RollCounting.Whole,
        Severity rejectFrom = Severity.Warning, ValueList<string>? accepted = null, decimal hour = 45) => new(
        stocks, new ValueList<Length>((laps ?? [20]).Select(Mm)), [1], [LayMaker.Rings(OneMetre)], Prices(prices, hour), Make.TakeOff(0), null, rolls, rejectFrom, accepted);
}
