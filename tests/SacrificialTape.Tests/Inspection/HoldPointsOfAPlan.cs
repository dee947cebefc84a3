using static SacrificialTape.Tests.Make;

namespace SacrificialTape.Tests.Inspection;

public sealed class HoldPointsOfAPlan
{
    private static readonly DateTimeOffset At = new(2025, 6, 3, 9, 0, 0, TimeSpan.FromHours(2));

    private static readonly InspectionPlan Plan = new(
        [new("A-1", Area.FromSquareMeters(12), hasWelds: true), new("T-3", Area.FromSquareMeters(500), paintStays: true, layers: 2)], RuleSet.Default, SamplingScheme.Iso19840);

    [Fact]
    public void The_order_is_that_of_the_work_with_the_trial_patch_first()
    {
        Assert.Equal(
            [
                "TrialPatch, bare steel (A-1)", "TrialPatch, over paint (T-3)",
                "Cleaning, A-1", "Welds, A-1", "Laps, A-1", "RollDown, A-1", "Creases, A-1", "Bubbles, A-1", "EndDirection, A-1", "Thickness, A-1",
                "Cleaning, T-3", "Contact, T-3", "Laps, T-3", "RollDown, T-3", "Creases, T-3", "Bubbles, T-3", "EndDirection, T-3", "Thickness, T-3",
            ],
            Plan.HoldPoints.Select(static point => point.ToString()));
        Assert.Equal([20, 70], Plan.HoldPoints.Where(static point => point.Kind == HoldPointKind.Thickness).Select(static point => point.Readings));
        foreach (IGrouping<string, HoldPoint> line in Plan.HoldPoints.GroupBy(static point => point.Place))
        {
            Assert.Equal(line.Select(static point => (int)point.Kind).Order(), line.Select(static point => (int)point.Kind));
        }
    }

    [Fact]
    public void The_crew_reads_the_limits_of_the_rule_set()
    {
        RuleSet strict = RuleSet.Default.With("strict", "1", RuleSet.Default[RuleIds.MinimumLap].WithLimit(new Measure(25, TradeUnit.Millimeter), Basis.Judgement("for this test")));
        string text = new InspectionPlan([new("A-1", Area.FromSquareMeters(12))], strict).ToText();
        Assert.Contains("the least lap is at least 25 mm", text, StringComparison.Ordinal);
        Assert.Contains("hot or pressurised pipe", text, StringComparison.Ordinal);
        Assert.Contains("lead and chromate", text, StringComparison.Ordinal);
        Assert.All(Plan.HoldPoints.SelectMany(static point => point.RuleIds), static id => Assert.True(RuleSet.Default.TryGet(id, out _), id));
    }

    [Fact]
    public void A_line_from_a_lay_has_its_area_and_layers()
    {
        var lay = new RingLay(Pipe(), Stock(), Mm(20));
        var line = InspectionPlanLine.FromLay("A-1", lay);
        Near.Equal(lay.Pipe.Area.SquareMeters, line.Area.SquareMeters, 1e-14);
        Assert.Equal(lay.LayersEverywhere, line.Layers);
    }

    [Fact]
    public void Each_reading_is_held_against_its_rule()
    {
        Assert.Equal([RuleIds.MinimumLap], Ids(HoldPointReading.OfLaps(Mm(9.9), Mm(10), "Ann", At)));
        Assert.Equal([RuleIds.MinimumEndLap], Ids(HoldPointReading.OfLaps(Mm(10), Mm(9), "Ann", At)));
        Assert.Empty(Ids(HoldPointReading.OfLaps(Mm(10), null, "Ann", At)));
        Assert.Equal([RuleIds.MinimumBareRatio], Ids(HoldPointReading.OfContact(BareRatio.FromSquareCentimetersPerSquareMeter(99), "Ann", At)));
        Assert.Equal([RuleIds.WeldsNotCovered], Ids(HoldPointReading.OfWelds(false, "Ann", At)));
        Assert.Equal([RuleIds.NotRolledDown], Ids(HoldPointReading.OfRollDown(false, "Ann", At)));
        Assert.Equal([RuleIds.OpenCreases], Ids(HoldPointReading.OfCreases(1, "Ann", At)));
        Assert.Equal([RuleIds.BubblesLeft], Ids(HoldPointReading.OfBubbles(2, "Ann", At)));
        Assert.Equal([RuleIds.EndFacesUp], Ids(HoldPointReading.OfEnds(false, "Ann", At)));
        Assert.Empty(Ids(HoldPointReading.OfCreases(0, "Ann", At)).Concat(Ids(HoldPointReading.OfEnds(true, "Ann", At))));
        Assert.Contains(RuleIds.SurfaceNotMeasured, Ids(HoldPointReading.OfCleaning(new SurfaceReading(), "Ann", At)));
    }

    [Fact]
    public void A_trial_patch_is_held_against_what_was_stated_for_the_job()
    {
        Assert.Empty(Ids(Patch(0.5, 0.2, TrialPatchFailure.WithinAdhesive)));
        Assert.Equal([RuleIds.TrialPatchPeel], Ids(Patch(0.39, 0.2, TrialPatchFailure.FoilTore)));
        Assert.Equal([RuleIds.TrialPatchResistance], Ids(Patch(0.5, 0.51, TrialPatchFailure.FoilTore)));
        Assert.Equal([RuleIds.TrialPatchOffSurface], Ids(Patch(0.5, 0.2, TrialPatchFailure.CleanOffSurface)));
        Assert.Equal([RuleIds.TrialPatchTookPaint], Ids(Patch(0.5, 0.2, TrialPatchFailure.TookPaintOrScale)));
        Assert.Equal([RuleIds.NotInspected, RuleIds.NotInspected, RuleIds.NotInspected], Ids(Patch(null, null, null)));
    }

    [Fact]
    public void What_was_not_inspected_stands_in_the_record_until_signed()
    {
        var record = new AsBuiltRecord(Plan, [new AsBuiltLine("A-1", "crew 2", At, [Good], Readings())]);
        Assert.Equal(
            ["over paint (T-3), Trial patch", "A-1, Thickness", "T-3, the whole line"],
            record.Findings.Where(static one => one.Rule.Id == RuleIds.NotInspected).Select(static one => one.Subject));
        Assert.Equal(record.Findings.Count, record.OpenFindings.Count);
        Finding first = record.OpenFindings[0];
        AsBuiltRecord signed = record.Sign(first, "Ann", At, "line T-3 is put off to July");
        Assert.Equal(record.Findings, signed.Findings);
        Assert.DoesNotContain(first, signed.OpenFindings);
        Assert.Contains("Signed [inspection.not-inspected] over paint (T-3), Trial patch: line T-3 is put off to July (Ann, 2025-06-03 09:00 +02:00)", signed.ToText(), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => signed.Sign(first, "Ann", At, "again"));
        Assert.Throws<ArgumentException>(() => record.Sign(first, "Ann", At, " "));
    }

    [Fact]
    public void A_record_of_all_good_readings_has_no_findings()
    {
        var plan = new InspectionPlan([new("A-1", Area.FromSquareMeters(12), hasWelds: true)], RuleSet.Default);
        var record = new AsBuiltRecord(plan, [new AsBuiltLine("A-1", "crew 2", At, [Good], Readings())]);
        Assert.Empty(record.Findings);
        Assert.Contains("batch 4711, made 2025-01-10, use before 2026-01-10, stored at 8 to 24 degC", record.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_batch_that_is_unknown_expired_or_badly_stored_leaves_findings()
    {
        Assert.Equal([RuleIds.BatchUnknown, RuleIds.BatchExpiryUnknown, RuleIds.BatchStorageUnknown], Of(TapeBatch.Unknown, 2025));
        Assert.Empty(Of(Good, 2025));
        Assert.Equal([RuleIds.BatchExpired], Of(Good, 2027));
        Assert.Equal([RuleIds.BatchLaidBeforeMade], Of(Good, 2024));
        TapeBatchStorage allowed = Range(5, 30);
        Assert.Equal(
            [RuleIds.BatchStorageOutside, RuleIds.BatchStorageOutside],
            Of(new TapeBatch("4711", null, new DateOnly(2026, 1, 10), allowed, Range(-2, 41)), 2025));

        // The last day itself is allowed.
        Assert.Empty(Good.Judge(new DateOnly(2026, 1, 10), RuleSet.Default, "A-1"));
        Assert.Single(Good.Judge(new DateOnly(2026, 1, 11), RuleSet.Default, "A-1"));
        static string[] Of(TapeBatch batch, int year) => [.. batch.Judge(new DateOnly(year, 6, 3), RuleSet.Default, "A-1").Select(static one => one.Rule.Id)];
    }

    [Fact]
    public void Bad_input_is_refused()
    {
        Assert.Contains("stands twice", Assert.Throws<ArgumentException>(static () => new InspectionPlan([new("A", Area.FromSquareMeters(1)), new("A", Area.FromSquareMeters(2))], RuleSet.Default)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(static () => new InspectionPlan([], RuleSet.Default));
        Errors.Refused(static () => new InspectionPlanLine("A", Area.Zero), "area", "0 m2");
        Errors.Refused(static () => HoldPointReading.OfLaps(Mm(-1), null, "Ann", At), "least", "-1 mm");
        Errors.Refused(static () => HoldPointReading.OfBubbles(-1, "Ann", At), "left", "-1");
        Errors.Refused(static () => Range(30, 5), "highest", "5 degC", "at least the lowest");
        Assert.Throws<ArgumentException>(static () => new TapeBatch("4711", new DateOnly(2025, 1, 1), new DateOnly(2024, 1, 1), null, null));
        Assert.Throws<ArgumentException>(static () => new TapeBatch(" ", null, null, null, null));
        Assert.Throws<ArgumentException>(static () => new AsBuiltLine("A-1", "crew", At, [], []));
        Assert.Contains("not in the plan", Assert.Throws<ArgumentException>(static () => new AsBuiltRecord(Plan, [new AsBuiltLine("X", "crew", At, [Good], [])])).Message, StringComparison.Ordinal);
        Errors.Refused(static () => Patch(101, null, null), "peel", "101 N/mm");
    }

    private static TapeBatch Good => new("4711", new DateOnly(2025, 1, 10), new DateOnly(2026, 1, 10), Range(5, 30), Range(8, 24));

    private static TapeBatchStorage Range(double low, double high) => new(Temperature.FromDegreesCelsius(low), Temperature.FromDegreesCelsius(high));

    private static string[] Ids(HoldPointReading reading) => [.. reading.Judge(RuleSet.Default, "A-1").Select(static one => one.Rule.Id)];

    private static string[] Ids(TrialPatch patch) => Ids(HoldPointReading.OfTrialPatch(patch, "Ann", At));

    private static TrialPatch Patch(double? peel, double? resistance, TrialPatchFailure? failure) => new(
        ForcePerLength.FromNewtonsPerMillimeter(0.4),
        ContactResistivity.FromOhmSquareCentimeters(0.5),
        peel is { } pulled ? ForcePerLength.FromNewtonsPerMillimeter(pulled) : null,
        resistance is { } through ? ContactResistivity.FromOhmSquareCentimeters(through) : null,
        failure);

    private static HoldPointReading[] Readings() =>
    [
        HoldPointReading.OfTrialPatch(Patch(0.5, 0.2, TrialPatchFailure.WithinAdhesive), "Ann", At),
        HoldPointReading.OfCleaning(
            new SurfaceReading(
                new MoistAir(Temperature.FromDegreesCelsius(18), RelativeHumidity.FromPercent(60)), Temperature.FromDegreesCelsius(17), Temperature.FromDegreesCelsius(45),
                SurfaceWetness.Dry, Duration.FromHours(20), Duration.FromHours(5), CleaningGrade.St3, null, new DustRating(1, 1), [], AreaDensity.FromMilligramsPerSquareMeter(12), null, PaintSoundness.Bare),
            "Ann",
            At),
        HoldPointReading.OfWelds(true, "Ann", At), HoldPointReading.OfLaps(Mm(18), Mm(22), "Ann", At), HoldPointReading.OfRollDown(true, "Ann", At),
        HoldPointReading.OfCreases(0, "Ann", At), HoldPointReading.OfBubbles(0, "Ann", At), HoldPointReading.OfEnds(true, "Ann", At),
    ];
}
