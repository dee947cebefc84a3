using SacrificialTape.Documents;
using SacrificialTape.Exposure;
using SacrificialTape.Inspection;
using SacrificialTape.Jobs;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.SiteConditions;
using SacrificialTape.Surfaces;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Fuzz;

/// <summary>Small documents to begin from. Written anew for each run: a parent's fingerprint follows its rules.</summary>
internal static class Seeds
{
    internal static void Write(string folder)
    {
        Rule lap = RuleSet.Default[RuleIds.MinimumLap].WithLimit(new Measure(15, TradeUnit.Millimeter), Basis.OwnExperience("trial wraps"))
            .WithValidity(new ValidityPeriod(new DateOnly(2026, 1, 1), new DateOnly(2027, 1, 1)));
        var own = new Rule(
            "team.wind", "Wind", RuleKind.Maximum, new Measure(8, TradeUnit.One), Severity.Warning, Basis.From(References.Find("taping-a-cylinder-2001")!, "n"), "Wait.");
        RuleSet one = RuleSet.Default.With("t", "1", lap);
        RuleSet both = one.With("t", "1", own);
        Save("small", new RuleSetDocument(one, RuleSet.Default).Write());
        Save("team", new RuleSetDocument(
            both, RuleSet.Default, [new RuleApproval(lap.Id, "A", new DateOnly(2026, 11, 2))],
            [new Waiver(lap.Id, "BR-101", "why", "who", new DateOnly(2026, 1, 1), new DateOnly(2026, 2, 1))], RuleSetDocument.Reference.Cases.Take(1)).Write());
        Save("no-parent", """{"document":"rule set","schema":1,"name":"n","version":"v","rules":[]}""");

        StripStock stock = new(new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25))), Length.FromMillimeters(100), Length.FromMeters(50));
        var pipe = new StraightPipe(Length.FromMillimeters(168.3), Length.FromMeters(3));
        ILay[] lays =
        [
            new SpiralLay(pipe, stock, SpiralSetting.FromTrueLap(Length.FromMillimeters(20)), SpiralEnds.LevelTurns()),
            new RingLay(pipe, stock, Length.FromMillimeters(15)),
            new PanelLay(new RectangularPanel(Length.FromMeters(1), Length.FromMeters(1), [PanelOpening.Circular(Length.FromMillimeters(100))]), stock, PanelDirection.AlongWidth, Length.FromMillimeters(15)),
            InterruptedLay.Of(new InterruptedPipe(pipe, [StayClear.Band(StayClearKind.FlangedJoint, Length.FromMillimeters(60), 2)]), span => new RingLay(span, stock, Length.FromMillimeters(15))),
        ];
        TakeOffChoices takeOff = TakeOffChoices.FromRules(RuleSet.Default, Contingency.FromFraction(0.05));
        for (int i = 0; i < lays.Length; i++)
        {
            var line = new SurveyLine("A", lays[i], ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(20)));
            Save("job-" + i, new JobDocument(new Job("j", [line], takeOff), notes: [new JobNote("n", "A")]).Write());
        }

        var estimated = new SurveyLine("A", lays[1], ZincExposure.FromCategory(CorrosivityCategory.C3), Lifetime.Of(Duration.FromYears365(20)));
        Save("estimate", new EstimateDocument(new JobDocument(new Job("j", [estimated], takeOff)), new DateOnly(2031, 5, 4)).Write());
        Save("inspection", new InspectionDocument("i", [Readings()]).Write());
        Save("as-built", new AsBuiltDocument("a", Record()).Write());

        void Save(string name, string text) => File.WriteAllText(Path.Combine(folder, name + ".json"), text);
    }

    private static ReadingSet Readings()
    {
        ValueList<FoilReading> readings = [.. new[] { 80, 85, 90 }.Select(static um =>
            FoilReading.Measured(Length.FromMicrometers(um), new ReadingPreparation(true, Length.FromMicrometers(5), "n")))];
        return new ReadingSet("A", new DateOnly(2031, 5, 4), "b", "c", new FoilReadings(new Foil(Length.FromMicrometers(100)), readings, Probability.FromFraction(0.05)));
    }

    private static AsBuiltRecord Record()
    {
        DateTimeOffset at = new(2031, 5, 4, 10, 0, 0, TimeSpan.FromHours(2));
        var plan = new InspectionPlan([new InspectionPlanLine("A", Area.FromSquareMeters(12), paintStays: true)], RuleSet.Default);
        HoldPointReading[] readings =
        [
            HoldPointReading.OfTrialPatch(new TrialPatch(ForcePerLength.FromNewtonsPerMillimeter(0.3), ContactResistivity.FromOhmSquareCentimeters(1), null, null, TrialPatchFailure.FoilTore), "b", at),
            HoldPointReading.OfCleaning(new SurfaceReading(new MoistAir(Temperature.FromDegreesCelsius(20), RelativeHumidity.FromPercent(60)), wetness: SurfaceWetness.Dry, residues: [SurfaceResidue.Oil]), "b", at),
            HoldPointReading.OfLaps(Length.FromMillimeters(7), null, "b", at),
            HoldPointReading.OfRollDown(false, "b", at),
            HoldPointReading.OfThickness(new AcceptanceByReadings([Length.FromMicrometers(96)], Length.FromMicrometers(125), AcceptanceRule.NinetyTen, RuleSet.Default, "A"), "b", at),
        ];
        var record = new AsBuiltRecord(plan, [new AsBuiltLine("A", "b", at, [TapeBatch.Unknown, new TapeBatch("1", new DateOnly(2031, 1, 1), null, null, null)], readings)]);
        return record.Sign(record.OpenFindings[0], "c", at, "d");
    }
}
