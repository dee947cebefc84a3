namespace SacrificialTape.Reports.Tests;

/// <summary>An invented job with a spiral, level ends, rings over paint, a bend and a line that stops.</summary>
internal static class Samples
{
    internal static readonly Lifetime FifteenYears = Lifetime.Of(Duration.FromDays(15 * 365));

    internal static readonly SpiralLay Spiral = new(new StraightPipe(Mm(168.3), Length.FromMeters(1200)), Stock(100), SpiralSetting.FromTrueLap(Mm(15)));

    internal static readonly RingLay Rings = new(new StraightPipe(Mm(114.3), Length.FromMeters(2)), Stock(100), Mm(15));

    internal static readonly BendRingLay Bend = new(new Bend(Mm(168.3), Mm(229), Angle.FromDegrees(90)), Stock(40), Mm(12));

    internal static Length Mm(double value) => Length.FromMillimeters(value);

    internal static StripStock Stock(double widthMm) => new(
        new Tape(new Foil(Length.FromMicrometers(100), Length.FromMicrometers(5)), new Adhesive(Length.FromMicrometers(25))), Mm(widthMm), Length.FromMeters(50));

    internal static JobEstimate Estimate(string name = "Jetty", RuleSet? rules = null)
    {
        var exposure = ZincExposure.FromCategory(CorrosivityCategory.C4);
        SurveyLine[] lines =
        [
            new("A-1", Spiral, exposure, FifteenYears),
            new("A-2", new SpiralLay(new StraightPipe(Mm(168.3), Length.FromMeters(6)), Stock(100), SpiralSetting.FromTrueLap(Mm(55)), SpiralEnds.LevelTurns(1)), exposure, FifteenYears),
            new(new LineNeeds("A-3", exposure, FifteenYears, windows: WindowPlan.For(Rings, RuleSet.Default)), Rings),
            new("A-4", Bend, exposure, FifteenYears),
            new("A-5", Spiral, exposure, FifteenYears, new SteelCondition(serviceTemperature: Temperature.FromDegreesCelsius(90), wetInService: true)),
        ];
        return new Job(name, lines, new TakeOffChoices(Mm(50), Length.FromMeters(1), Contingency.FromFraction(0.05)), rules).Estimate();
    }
}
