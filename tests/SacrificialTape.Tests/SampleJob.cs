using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests;

/// <summary>A small invented job that passes through every room and has findings of every severity.</summary>
internal static class SampleJob
{
    internal static Job Make() => Job();

    private static Job Job()
    {
        StripStock stock = Stock();
        StripStock narrow = Stock(50.8);
        var life = Lifetime.Of(Duration.FromYears365(17.5));
        return new Job(
            "sample",
            [
                new SurveyLine("A-1", new SpiralLay(Pipe(60.3, 4321.5), stock, SpiralSetting.FromLapBetweenMarks(Mm(20.5))),
                    ZincExposure.FromCategory(CorrosivityCategory.C3), life,
                    new SteelCondition(windowsInPaint: new ContactWindows(3, Area.FromSquareCentimeters(12.5)), serviceTemperature: Temperature.FromDegreesCelsius(55.5), wetInService: true),
                    new WeldWork([new GirthWelds(Mm(60.3), 2), new LongitudinalWelds(Mm(4321.5), 1)], narrow, Mm(10)),
                    spots: [StayClear.Spot(StayClearKind.NamePlate, Mm(80.5), Mm(40.5)), StayClear.RoundSpot(StayClearKind.WeepHole, Mm(6.5), 2)]),
                new SurveyLine("A-2", new SpiralLay(Pipe(168.3, 12_345.6), stock, SpiralSetting.FromTrueLap(Mm(50)), SpiralEnds.LevelTurns(2), Choices(2, 12.5)),
                    ZincExposure.FromCategory(CorrosivityCategory.CX), life, layersWanted: 2),
                new SurveyLine("A-3", new RingLay(Pipe(1219, 2500.5), Stock(300, 12.5, 0.15), Mm(12.5), Choices(1.5)),
                    ZincExposure.FromMeasurement(CorrosionRate.FromMicrometersPerYear(0), CorrosionRate.FromMicrometersPerYear(1.25), "two coupons, one year"),
                    Lifetime.Unlimited, new SteelCondition(SubstrateMetal.StainlessSteel, orientation: LineOrientation.Vertical)),
                new SurveyLine("A-4", new AlongPipeLay(Pipe(273, 6000), new StripStock(Tape(0.08, faced: true), Mm(200), Length.FromMeters(25)), Mm(10)),
                    ZincExposure.FromCategory(CorrosivityCategory.C5), life),
            ],
            Tests.Make.TakeOff(0.075));
    }
}
