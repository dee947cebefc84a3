using SacrificialTape.Exposure;
using SacrificialTape.Inspection;
using SacrificialTape.Rules;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>An inspection as data: plain numbers, the unit at the end of each name. A life that is undetermined is null.</summary>
internal sealed record InspectionData(
    string Name,
    DateOnly Laid,
    double CoveredM2,
    IReadOnlyList<CampaignData> Campaigns,
    double RequiredUm,
    IReadOnlyList<RateData> Rates,
    IReadOnlyList<RemainingData> Remaining,
    double? PlanByYears,
    DateOnly LookAgainBy,
    double? GreatestLossUm,
    string? NoGreatestLossBecause,
    IReadOnlyList<PatchData> Patches,
    IReadOnlyList<PatchStockData> PatchStock,
    RepairData? PatchOrRewrap,
    IReadOnlyList<FindingData> Findings)
{
    internal static InspectionData Of(TankInspection one) => new(
        one.Terms.Name,
        one.Terms.Laid,
        one.Terms.Covered.SquareMeters,
        [.. one.Campaigns.Select(day => CampaignData.Of(day, one.Terms))],
        one.Required.Micrometers,
        [.. one.ByRate.Select(static rate => new RateData(rate.Choice.ToString(), rate.Rate?.MicrometersPerYear, Years(rate.Remaining)))],
        [.. one.Checks.Select(RemainingData.Of)],
        Years(one.PlanBy),
        one.NextDay,
        one.Extremes?.LargestLoss.Micrometers,
        one.Extremes is null ? one.WhyNoExtremes : null,
        [.. (one.Repairs?.Repairs ?? []).Select(static repair => new PatchData(repair.Damage.Name, repair.Patch.Length.Millimeters, repair.Patch.Width.Millimeters, repair.Strip.Count))],
        [.. (one.RepairRolls?.Stocks ?? []).Select(static stock => new PatchStockData(stock.Stock.ToString(), stock.Rolls))],
        one.Comparison is { } comparison ? RepairData.Of(comparison) : null,
        [.. one.Findings().Select(FindingData.Of)]);

    internal static double? Years(Duration? life) => life?.Days / 365;
}

/// <summary>The readings of one day.</summary>
internal sealed record CampaignData(
    DateOnly Day, double AgeYears, int Count, double MeanUm, double StandardDeviationUm, double LowestUm, double LimitUm, double? LimitByRankUm, IReadOnlyList<double> FlaggedUm)
{
    internal static CampaignData Of(Campaign day, InspectionTerms terms) => new(
        day.Day,
        day.Age.Days / 365,
        day.Used.Count,
        day.Used.Mean.Micrometers,
        day.Used.StandardDeviation.Micrometers,
        day.Used.Lowest.Micrometers,
        new ThicknessLimit(day.Used, terms.Coverage, terms.Confidence).Value.Micrometers,
        new RankLimit(day.Used, terms.Coverage, terms.Confidence).Value?.Micrometers,
        [.. day.Readings.Outliers.Select(static flagged => flagged.Thickness.Micrometers)]);
}

/// <summary>A rate and the straight line through it.</summary>
internal sealed record RateData(string Rate, double? UmPerYear, double? RemainingYears);

/// <summary>Remaining life under one law, and the estimate held against it.</summary>
internal sealed record RemainingData(
    string Law,
    double? MeanYears,
    double? EarliestYears,
    double? LatestYears,
    double? ThinSpotsYears,
    double? FirstYearUmPerYear,
    double? CorrectedLowestUmPerYear,
    double? CorrectedHighestUmPerYear,
    double PredictedLowestUmPerYear,
    double PredictedHighestUmPerYear,
    string Verdict)
{
    internal static RemainingData Of(PredictionCheck check)
    {
        RemainingLifeFromReadings life = check.Measured;
        RateRange? corrected = life.FirstYearRange;
        return new(
            life.Law.Name,
            InspectionData.Years(life.Mean),
            InspectionData.Years(life.Earliest),
            InspectionData.Years(life.Latest),
            InspectionData.Years(life.OfThinSpots),
            life.FirstYear?.MicrometersPerYear,
            corrected?.Lowest.MicrometersPerYear,
            corrected?.Highest.MicrometersPerYear,
            check.Predicted.FirstYear.Lowest.MicrometersPerYear,
            check.Predicted.FirstYear.Highest.MicrometersPerYear,
            check.Verdict.ToString());
    }
}

/// <summary>A patch to cut.</summary>
internal sealed record PatchData(string Damage, double LengthMm, double WidthMm, int Strips);

/// <summary>Tape for the patches.</summary>
internal sealed record PatchStockData(string Stock, long Rolls);

/// <summary>Patching against rewrapping.</summary>
internal sealed record RepairData(string Verdict, string Currency, decimal Patching, decimal Rewrapping, decimal? PatchingPerYear, decimal RewrappingPerYear, IReadOnlyList<string> Reasons)
{
    internal static RepairData Of(RepairComparison comparison)
    {
        RepairDecision decision = comparison.Decide(RuleSet.Default);
        return new(
            decision.Verdict.ToString(),
            comparison.Patching.Currency,
            comparison.Patching.Rounded().Amount,
            comparison.Rewrapping.Rounded().Amount,
            comparison.PatchingPerYear?.Rounded().Amount,
            comparison.RewrappingPerYear.Rounded().Amount,
            [.. decision.Reasons]);
    }
}
