using System.Text.Json;
using System.Text.Json.Serialization;
using PlantSurvey.SiteRecords;
using PlantSurvey.TankInspections;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;
using SacrificialTape.TakeOff;
using SacrificialTape.Wrapping;

namespace PlantSurvey;

/// <summary>The estimate as data: plain numbers, the unit at the end of each name.</summary>
internal static class JsonReport
{
    internal static int Write(Survey survey, JobEstimate estimate, CostEstimate? cost, TextWriter output)
    {
        output.WriteLine(JsonSerializer.Serialize(Data(survey, estimate, cost), JsonReportContext.Default.JobData));
        return 0;
    }

    private static JobData Data(Survey survey, JobEstimate estimate, CostEstimate? cost) => new(
        estimate.Job.Name,
        estimate.Job.Rules.ToString(),
        [.. LineLife.Of(survey, estimate).Select(life => Data(life, survey.Choices.Life))],
        [.. estimate.TakeOff.Stocks.Select(Data)],
        [.. estimate.GeneralFindings.Select(FindingData.Of)],
        estimate.Covered.SquareMeters,
        estimate.StripLength.Meters,
        estimate.TakeOff.ZincBought.Kilograms,
        estimate.TakeOff.ZincLaid.Kilograms,
        cost is null ? null : Data(cost),
        SiteData.Of(survey.Site, survey.Job.Rules),
        [.. survey.Inspections.Select(InspectionData.Of)]);

    private static CostData Data(CostEstimate cost)
    {
        CostLedger ledger = cost.ToLedger();
        return new(
            cost.Prices.Currency,
            ledger.Total.Amount,
            cost.FirstCostPerSquareMeter.Rounded().Amount,
            [.. ledger.Lines.Select(static line => new CostLineData(line.Line.Kind.ToString(), line.Line.Name, line.Amount.Amount))]);
    }

    private static LineData Data(LineLife life, LifeChoices choices)
    {
        LineEstimate line = life.Line;
        ILay lay = line.Line.Lay;
        var spiral = lay as SpiralLay;
        return new(
            line.Line.Tag,
            lay.Surface.Description,
            lay.Surface.Area.SquareMeters,
            lay.Description,
            lay.Stock.ToString(),
            spiral?.Geometry.Angle.Degrees,
            spiral?.Geometry.Advance.Millimeters,
            spiral?.Geometry.TrueLap.Millimeters ?? (lay as RingLay)?.Lap.Millimeters ?? (lay as AlongPipeLay)?.Lap.Millimeters ?? (lay as BendRingLay)?.OutsideLap.Millimeters,
            lay.LayersEverywhere,
            lay.LayersOnAverage.Ratio,
            [.. line.Strips.Select(static strip => new StripData(
                strip.Purpose.ToString(), strip.Stock.ToString(), strip.Count, strip.Length.Meters, strip.Cover.Meters, strip.Lap.Meters, strip.Trim.Meters))],
            line.StripLength.Meters,
            life.Exposure,
            life.Notes.Exposure?.Kind ?? (line.Life.Exposure.Category is null ? "measured" : "category"),
            [.. line.Line.Steel.Hazards.Present.Select(static hazard => hazard.ToString())],
            line.Life.ZincCounted.Micrometers,
            Years(line.Life.Earliest),
            Years(line.Life.Latest),
            Years(line.Line.RequiredLife),
            life.EarliestLaw.Name,
            line.LifeHolds,
            life.Distribution is { } known ? Data(known, life, choices) : null,
            life.WhyNot.Length == 0 ? null : life.WhyNot,
            line.Contact?.Ratio.SquareCentimetersPerSquareMeter,
            line.ProvenContact?.FindWorstMetre().Ratio.SquareCentimetersPerSquareMeter,
            [.. line.Findings.Select(FindingData.Of)],
            [.. line.CrewSteps.Select(static step => $"{step.Activity}: {step.Text}")]);
    }

    private static LifeData Data(LifeDistribution known, LineLife life, LifeChoices choices)
    {
        var plan = new LifePlan(known, choices.Confidence);
        HotDipComparison? beside = life.HotDip(choices.Confidence);
        return new(
            known.Uncertainty.Rate.Name,
            known.Uncertainty.Rate.LogNormal.Median.MicrometersPerYear,
            known.Uncertainty.Rate.LogNormal.Spread.Value,
            known.Uncertainty.Growth.Name,
            [.. LifeReport.Confidences.Select(one => new ReachedData(one, Years(known.ReachedWith(Probability.FromFraction(one)))))],
            known.ChanceOf(life.Line.Line.RequiredLife).Fraction,
            choices.Confidence.Fraction,
            Years(plan.Until(LifeReport.Left(2))),
            Years(plan.Until(LifeReport.Left(1))),
            LifeReport.Day(plan, choices, LifeReport.Left(2)),
            LifeReport.Day(plan, choices, LifeReport.Left(1)),
            beside is null ? null : new HotDipData(beside.Coating.Thickness.Micrometers, Years(beside.CoatingLife), beside.EqualCoating.Micrometers));
    }

    private static StockData Data(StockTakeOff stock) => new(
        stock.Stock.ToString(),
        stock.Rolls,
        stock.LeastRolls,
        stock.ProvedMinimal,
        stock.Splices,
        stock.Ledger.Bought.Meters,
        stock.Ledger.Cover.Meters,
        stock.Ledger.Lap.Meters,
        stock.Ledger.Trim.Meters,
        stock.Ledger.Splice.Meters,
        stock.Ledger.Contingency.Meters,
        stock.Ledger.Offcut.Meters,
        stock.ZincBought.Kilograms);

    // A life without end is null: JSON has no word for it.
    internal static double? Years(Lifetime life) => life.IsUnlimited ? null : life.Duration.Days / 365;
}

internal sealed record JobData(
    string Job,
    string Rules,
    IReadOnlyList<LineData> Lines,
    IReadOnlyList<StockData> Order,
    IReadOnlyList<FindingData> Findings,
    double CoveredM2,
    double StripM,
    double ZincBoughtKg,
    double ZincLaidKg,
    CostData? Cost,
    SiteData? Site,
    IReadOnlyList<InspectionData> Inspections);

internal sealed record CostData(string Currency, decimal Total, decimal PerM2, IReadOnlyList<CostLineData> Lines);

internal sealed record CostLineData(string Kind, string Item, decimal Amount);

internal sealed record LineData(
    string Line,
    string Surface,
    double AreaM2,
    string Lay,
    string Stock,
    double? AngleDeg,
    double? MarkMm,
    double? TrueLapMm,
    int LayersEverywhere,
    double LayersOnAverage,
    IReadOnlyList<StripData> Strips,
    double StripM,
    string Exposure,
    string ExposureKind,
    IReadOnlyList<string> Hazards,
    double ZincCountedUm,
    double? EarliestYears,
    double? LatestYears,
    double? RequiredYears,
    string EarliestLaw,
    bool LifeHolds,
    LifeData? LifeSpread,
    string? NoLifeSpreadBecause,
    double? BareCm2PerM2,
    double? WorstMetreCm2PerM2,
    IReadOnlyList<FindingData> Findings,
    IReadOnlyList<string> CrewSteps);

internal sealed record LifeData(
    string Rate,
    double MedianUmPerYear,
    double S,
    string Growth,
    IReadOnlyList<ReachedData> Reached,
    double ChanceOfRequired,
    double PlanConfidence,
    double? TwoThirdsLeftYears,
    double? OneThirdLeftYears,
    DateOnly? TwoThirdsLeftOn,
    DateOnly? OneThirdLeftOn,
    HotDipData? HotDip);

internal sealed record ReachedData(double Confidence, double? Years);

internal sealed record HotDipData(double CoatingUm, double? CoatingYears, double TapeIsWorthUm);

internal sealed record StripData(string Purpose, string Stock, int Count, double LengthM, double CoverM, double LapM, double TrimM);

internal sealed record StockData(
    string Stock,
    long Rolls,
    long LeastRolls,
    bool ProvedMinimal,
    long Splices,
    double BoughtM,
    double CoverM,
    double LapM,
    double TrimM,
    double SpliceM,
    double ContingencyM,
    double OffcutM,
    double ZincBoughtKg);

[JsonSourceGenerationOptions(WriteIndented = true, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(JobData))]
internal sealed partial class JsonReportContext : JsonSerializerContext;
