using SacrificialTape.Costing;
using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace HostTool;

/// <summary>What this tool would read from its own files: three columns of a road that does not exist, at invented prices.</summary>
internal static class LightingJob
{
    private static readonly LabourKind Work = new(StripPurpose.Other, ApplicationMethod.ByHand, "lighting column");

    private static readonly StripStock Stock = new(
        new Tape(new Foil(Length.FromMicrometers(100)), new Adhesive(Length.FromMicrometers(25))), Length.FromMillimeters(100), Length.FromMeters(25));

    #region job
    internal static Job Of(RuleSet rules)
    {
        ZincExposure place = ZincExposure.FromCategory(CorrosivityCategory.C4);
        var required = Lifetime.Of(Duration.FromYears365(15));
        var salted = new SaltedRoadLoss(1.5, Duration.FromYears365(10), Basis.Judgement("spray of de-icing salt until the by-pass opens (invented)"));
        SurveyLine[] lines =
        [
            new("LC-01", Flats(180, 6), place, required, laws: [salted]),
            new("LC-02", Flats(200, 8), place, required, laws: [salted]),
            new("LC-03", Flats(200, 8), place, required),
        ];
        return new Job(
            "Harbour Road",
            lines,
            TakeOffChoices.FromRules(rules, Contingency.FromFraction(0.05)),
            rules,
            ownRules: [new OneReach(), new SupplyIsolated(["LC-01", "LC-02"])]);
    }
    #endregion

    #region price
    internal static CostEstimate Price(JobEstimate estimate) => new(
        estimate.TakeOff,
        estimate.Covered,
        [new LabourWork(Work, estimate.Covered, estimate.StripLength, estimate.Lines.SelectMany(static line => line.Strips).Sum(static strip => strip.Count))],
        new CostPrices(
            [new RollPrice(Stock, new Money(68, "EUR"))],
            new LabourRate(new Money(46, "EUR")),
            [new LabourNorm(Work, LabourMeasure.Pieces, Duration.FromMinutes(12))],
            own: [new LaneClosure(estimate, columnsANight: 2, new Money(310, "EUR"))]));
    #endregion

    private static FlatStripLay Flats(double acrossFootMm, double heightM) => new(
        new OctagonalColumn(Length.FromMillimeters(acrossFootMm), Length.FromMillimeters(90), Length.FromMeters(heightM)),
        Stock,
        edgeRadius: Length.FromMillimeters(6));
}
