using SacrificialTape.Inspection;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Snippets;

/// <summary>What docs/inspection-plan.md quotes.</summary>
public static class InspectionPlanPage
{
    public static void Counts()
    {
        #region counts
        foreach (SamplingScheme scheme in Enum.GetValues<SamplingScheme>())
        {
            Console.WriteLine(new SamplingCount(scheme, Area.FromSquareMeters(500)));
        }

        Console.WriteLine(new SamplingLine(Length.FromMeters(24), Length.FromMeters(5)));
        #endregion
    }

    public static void Plan()
    {
        #region plan
        var plan = new InspectionPlan(
            [new InspectionPlanLine("T-3", Area.FromSquareMeters(12), paintStays: true, hasWelds: true)],
            RuleSet.Default);
        Console.WriteLine(plan.ToText());
        #endregion
    }

    public static void AsBuilt()
    {
        #region as-built
        // An invented line: a lap of 8 mm, and a roll that was stored in frost.
        var plan = new InspectionPlan([new InspectionPlanLine("A-1", Area.FromSquareMeters(12))], RuleSet.Default);
        var at = new DateTimeOffset(2025, 6, 3, 11, 0, 0, TimeSpan.FromHours(2));
        var batch = new TapeBatch(
            "4711",
            madeOn: new DateOnly(2024, 11, 5),
            useBefore: new DateOnly(2025, 11, 5),
            allowedStorage: new TapeBatchStorage(Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(30)),
            stored: new TapeBatchStorage(Temperature.FromDegreesCelsius(-3), Temperature.FromDegreesCelsius(22)));
        var record = new AsBuiltRecord(plan,
        [
            new AsBuiltLine("A-1", "crew 2", at, [batch],
            [
                HoldPointReading.OfLaps(Length.FromMillimeters(8), Length.FromMillimeters(15), "foreman", at),
                HoldPointReading.OfRollDown(true, "foreman", at),
                HoldPointReading.OfCreases(0, "foreman", at),
                HoldPointReading.OfBubbles(0, "foreman", at),
                HoldPointReading.OfEnds(true, "foreman", at),
            ]),
        ]);
        Finding lap = record.Findings.Single(finding => finding.Rule.Id == RuleIds.MinimumLap);
        Console.WriteLine(record.Sign(lap, "inspector", at.AddHours(3), "a strip was laid over the spot").ToText());
        #endregion
    }
}
