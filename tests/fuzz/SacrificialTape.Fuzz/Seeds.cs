using SacrificialTape.Documents;
using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
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
            "team.wind", "Wind", RuleKind.Maximum, new Measure(8, TradeUnit.One), Severity.Warning, Basis.From(References.TapingACylinder, "n"), "Wait.");
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

        void Save(string name, string text) => File.WriteAllText(Path.Combine(folder, name + ".json"), text);
    }
}
