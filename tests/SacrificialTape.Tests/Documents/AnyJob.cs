using FsCheck;
using FsCheck.Fluent;
using SacrificialTape.Documents;
using static SacrificialTape.Tests.Documents.SurfaceKinds;
using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Documents;

/// <summary>Invented jobs with a line of every kind of lay, one of every kind of surface, and everything a line can say.</summary>
internal static class AnyJob
{
    private static readonly string[] Texts = ["plain", "with \"quotes\" and \\", "zinc \u03BCm \u00B0C", "two\nlines\tand a tab", "\U0001F600 <b>&amp;", "it's ['quoted']"];

    internal static DocumentForms Forms { get; } = new([OwnSurface.Form], [OwnLay.Form], [OwnCost.Form], [OwnLaw.Form]);

    /// <summary>Jobs by a seed, so that one that fails can be made again.</summary>
    internal static Arbitrary<int> Seeds => Arb.From(Gen.Choose(0, 1_000_000));

    internal static JobDocument Make(int seed)
    {
        var random = new Random(seed);
        StripStock[] stocks = [Stock(random), Stock(random), Stock(random)];
        ILay[] lays =
        [
            .. LayKinds.All.Select(make => make(random, stocks[random.Next(3)])),
            .. All.Select(make => new OwnLay(make(random), stocks[random.Next(3)], Texts[random.Next(Texts.Length)])),
            new OwnLay(new OwnSurface(new Measure(5 + (100 * random.NextDouble()), TradeUnit.Inch), 3), stocks[0], "tiles"),
        ];
        SurveyLine[] lines = [.. lays.Select((lay, i) => new SurveyLine(Needs(random, FormattableString.Invariant($"L-{i} {Texts[random.Next(Texts.Length)]}"), lay), lay))];
        RuleSet rules = random.Next(2) == 0 ? RuleSet.Default : TeamSet.Small;
        var job = new Job(Texts[random.Next(Texts.Length)], lines, TakeOff(random), rules);
        IEnumerable<StripStock> used = new JobDocument(job, null, null, [new NamedStock("wide", stocks[0])]).Stocks.Select(static stock => stock.Stock);
        return new JobDocument(
            job, random.Next(3) == 0 ? null : Prices(random, used),
            [new JobNote(Texts[random.Next(Texts.Length)]), new JobNote("about a line", lines[random.Next(lines.Length)].Tag)],
            [new NamedStock("wide", stocks[0])], random.Next(2) == 0, rulesDocument: TeamSet.Stated(random, rules));
    }

    internal static JobDocument Read(string text) => JobDocument.Read(text, [TeamSet.Small], Forms);

    private static StripStock Stock(Random random) => new(
        new Tape(
            new Foil(Mm(0.05 + (0.1 * random.NextDouble())), random.Next(2) == 0 ? null : Mm(0.01 * random.NextDouble()), random.Next(2) == 0 ? null : Density.FromKilogramsPerCubicMeter(7000 + random.NextDouble())),
            new Adhesive(Mm(0.02 + (0.02 * random.NextDouble())), random.Next(2) == 0 ? null : ContactResistivity.FromOhmSquareCentimeters(random.NextDouble())),
            random.Next(3) == 0 ? new FacingFilm(Mm(0.02 * (1 - random.NextDouble()))) : null),
        Some(random, 54, 58),
        Length.FromMeters(20 + (30 * random.NextDouble())));

    private static TakeOffChoices TakeOff(Random random)
    {
        Contingency share = Contingency.FromFraction(0.3 * random.NextDouble());
        return random.Next(2) == 0
            ? new TakeOffChoices(Some(random, 5, 20), Some(random, 500, 900), share)
            : new TakeOffChoices(Some(random, 5, 20), Some(random, 500, 900), new Spare(share, Some(random, 0, 4000), Contingency.FromFraction(random.NextDouble() / 10)));
    }

    private static LineNeeds Needs(Random random, string tag, ILay lay)
    {
        bool closed = random.Next(2) == 0;
        WindowLayout? windows = UnrolledSurface.TryUnroll(lay.Surface, out UnrolledSurface? unrolled) && closed
            ? new WindowLayout(unrolled, [ContactWindow.Disc(Some(random, 100, 120), Some(random, 60, 70), Some(random, 10, 20)), ContactWindow.Rectangle(Some(random, 180, 190), Some(random, 60, 70), Some(random, 10, 20), Some(random, 10, 20))])
            : null;
        var steel = new SteelCondition(
            random.Next(2) == 0 ? SubstrateMetal.CarbonSteel : SubstrateMetal.HighStrengthSteel,
            windows is null && closed ? new ContactWindows(3, Area.FromSquareCentimeters(0.02 * (1 + random.NextDouble()))) : null,
            random.Next(2) == 0 ? null : Temperature.FromDegreesCelsius(60 * random.NextDouble()),
            random.Next(2) == 0,
            random.Next(2) == 0 ? LineOrientation.Horizontal : LineOrientation.Vertical,
            random.Next(2) == 0 ? null : new LineHazards(
                [SiteHazard.Buried, SiteHazard.CopperCouple], Acidity.FromPh(14 * random.NextDouble()), Pressure.FromMegapascals(300 + random.NextDouble()), VickersHardness.FromHv(200 + random.NextDouble())));
        return new LineNeeds(
            tag,
            Exposure(random),
            random.Next(4) == 0 ? Lifetime.Unlimited : Lifetime.Of(Duration.FromYears365(5 + (20 * random.NextDouble()))),
            random.Next(3) == 0 && windows is null ? null : steel,
            random.Next(2) == 0 ? null : Welds(random, lay.Stock),
            1 + random.Next(2),
            random.Next(2) == 0 ? null : [StayClear.Spot(StayClearKind.NamePlate, Some(random, 1, 2), Some(random, 1, 2), margin: Some(random, 0, 1)), StayClear.RoundSpot(StayClearKind.WeepHole, Some(random, 1, 2), 2, Some(random, 0, 1))],
            random.Next(2) == 0 ? null : [new TapeEnd(Some(random, 0, 5), Some(random, 5, 10))],
            random.Next(2) == 0 ? null : new PaintFilm(Lifetime.Of(Duration.FromYears365(1 + random.NextDouble())), random.Next(2) == 0 ? Lifetime.Unlimited : Lifetime.Of(Duration.FromYears365(9)), random.Next(2) == 0),
            windows,
            random.Next(2) == 0 ? UnderTape.SoundPaint : UnderTape.TightRust,
            random.Next(3) != 0 ? null : [LinearLoss.Law, new PowerLawLoss(TimeExponent.FromValue(0.6 + (0.3 * random.NextDouble()))), new OwnLaw(0.5 + (random.NextDouble() / 2))]);
    }

    private static WeldWork Welds(Random random, StripStock stock) => new(
        [
            new GirthWelds(Some(random, 100, 200), 2),
            new LongitudinalWelds(Some(random, 1000, 20_000), 1),
            new FilletWelds(Some(random, 1000, 20_000), Some(random, 3, 9), 4),
            new MitreWelds(Some(random, 100, 200), Angle.FromDegrees(30 * (1 - random.NextDouble())), 2),
            new PlateWelds(new Shell(Some(random, 1000, 2000), Some(random, 3000, 6000), ShellAxis.Upright), 3, 2),
            new SaddleWelds(Some(random, 200, 300), Some(random, 100, 200), 1),
        ],
        stock,
        Some(random, 0, 20));

    private static ZincExposure Exposure(Random random)
    {
        CorrosionRate rate = CorrosionRate.FromMicrometersPerYear(random.NextDouble());
        return random.Next(7) switch
        {
            0 => ZincExposure.FromCategory(CorrosivityCategory.C3),
            1 => ZincExposure.FromMeasurement(rate, CorrosionRate.FromMicrometersPerYear(1 + random.NextDouble()), "coupons"),
            2 => ZincExposure.From(FirstYearRate.From(new DoseResponse(
                Metal.Zinc,
                new AnnualAtmosphere(
                    Temperature.FromDegreesCelsius(10 + random.NextDouble()), RelativeHumidity.FromPercent(75 + random.NextDouble()),
                    DepositionRate.FromMilligramsPerSquareMeterDay(10 * (1 + random.NextDouble())), DepositionRate.FromMilligramsPerSquareMeterDay(10 * (1 + random.NextDouble())))))),
            3 => ZincExposure.From(FirstYearRate.From(
                Metal.Zinc,
                new CouponLoss(Mass.FromGrams(1 + random.NextDouble()), Area.FromSquareCentimeters(100), Duration.FromYears365(1.5), Density.FromGramsPerCubicCentimeter(7.14)), "a coupon")),
            4 => ZincExposure.From(FirstYearRate.FromThicknessLoss(Metal.Zinc, Length.FromMicrometers(1 + random.NextDouble()), Duration.FromYears365(2), "a gauge")),
            5 => ZincExposure.From(FirstYearRate.OfZincIn(WaterKind.TemperateSea)),
            _ => ZincExposure.From(FirstYearRate.Indoors(Metal.Zinc, IndoorPlace.HumidProduction)),
        };
    }

    private static CostPrices Prices(Random random, IEnumerable<StripStock> stocks)
    {
        Money Eur(double amount) => new(Math.Round((decimal)amount, 4), "EUR");
        return new CostPrices(
            [.. stocks.Select(stock => new RollPrice(stock, Eur(100 * random.NextDouble())))],
            new LabourRate(new Money(45.50m, "EUR")),
            [new LabourNorm(new LabourKind(StripPurpose.Ring, ApplicationMethod.ByHand, "pipe"), LabourMeasure.Area, Duration.FromHours(random.NextDouble()))],
            [AccessItem.Lump("scaffold", Eur(900)), AccessItem.PerDay("lift", Eur(80), 2.5 + random.NextDouble())],
            [new Consumable("wipes", Eur(random.NextDouble()))],
            random.Next(2) == 0 ? null : new WasteDisposal(new Money(-0.75m, "EUR")),
            [
                new CostItem("permit", Eur(20), CostTiming.AtStart), new CostItem("look", Eur(30), CostTiming.Yearly),
                new CostItem("repair", Eur(30), CostTiming.After(Duration.FromYears365(1 + random.NextDouble()))),
                new CostItem("paint", Eur(30), CostTiming.Every(Duration.FromYears365(1 + random.NextDouble()), alsoAtTheEnd: false)),
                new OwnCost("inspector", 2),
            ]);
    }
}
