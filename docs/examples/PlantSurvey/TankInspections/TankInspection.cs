using SacrificialTape.Exposure;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;
using UnitsNet;

namespace PlantSurvey.TankInspections;

/// <summary>Tape that has been up for years: what its readings and its damage say.</summary>
internal sealed class TankInspection
{
    internal TankInspection(InspectionTerms terms, IReadOnlyList<Campaign> campaigns, IReadOnlyDictionary<string, Length> thinnest, IReadOnlyList<Damage> damages)
    {
        Campaign last = campaigns[^1];
        Foil foil = terms.Stock.Tape.Foil;
        Length required = PerforationLimit.Of(foil, terms.Usable);
        this.Terms = terms;
        this.Campaigns = campaigns;
        this.Required = required;
        this.Lives = [.. Laws.Select(law => new RemainingLifeFromReadings(foil, last.Used, last.Age, required, law, terms.Coverage, terms.Confidence))];
        this.Checks = [.. this.Lives.Select(life => new PredictionCheck(life, terms.Predicted))];
        this.ByRank = new RankLimit(last.Used, terms.Coverage, terms.Confidence);
        this.ByRate = [.. this.RatesOf(foil.Thickness, last)];
        this.Between = campaigns.Count > 1
            ? new LossBetween(campaigns[^2].Used, last.Used, last.Age - campaigns[^2].Age, terms.Confidence)
            : null;
        (this.Extremes, this.WhyNoExtremes) = ExtremesOf(terms, thinnest);
        this.Repairs = damages.Count > 0
            ? new RepairList(new ValueList<Damage>(damages), terms.Stock, terms.Repair.Margin, terms.Repair.Step, terms.Repair.Lap, OverlapHandling.Merge)
            : null;
        this.RepairRolls = this.Repairs is { } repairs ? StripTakeOff.Of(repairs.Strips, terms.TakeOff) : null;
    }

    internal static ILossLaw[] Laws { get; } = [LinearLoss.Law, PowerLawLoss.ZincMean];

    internal InspectionTerms Terms { get; }

    /// <summary>Days on which readings were taken, oldest first.</summary>
    internal IReadOnlyList<Campaign> Campaigns { get; }

    internal Length Required { get; }

    /// <summary>Remaining life, law by law.</summary>
    internal IReadOnlyList<RemainingLifeFromReadings> Lives { get; }

    internal IReadOnlyList<PredictionCheck> Checks { get; }

    internal RankLimit ByRank { get; }

    internal IReadOnlyList<RemainingLifeByRate> ByRate { get; }

    internal LossBetween? Between { get; }

    internal LargestLosses? Extremes { get; }

    internal string WhyNoExtremes { get; }

    internal RepairList? Repairs { get; }

    internal StripTakeOff? RepairRolls { get; }

    /// <summary>The life to plan by: of the thin spots, under the law that gives least. Null where a law leaves it undetermined.</summary>
    internal Duration? PlanBy => this.Lives.Any(static life => life.OfThinSpots is null)
        ? null
        : this.Lives.Min(static life => life.OfThinSpots!.Value);

    internal NextInspection Next => new(this.PlanBy, RuleSet.Default);

    internal DateOnly NextDay => this.Next.After(this.Campaigns[^1].Day);

    /// <summary>Of new tape of the same stock, by the corrected exposure of the law that gives least; null where there is none.</summary>
    internal LifeEstimate? NewTape
    {
        get
        {
            LifeEstimate[] lives = [.. this.Checks
                .Where(static check => check.Measured.FirstYear is not null)
                .Select(check => new LifeEstimate(this.Terms.Stock.Tape.Foil, this.Terms.Layers, this.Corrected(check), this.Terms.Usable))];
            return lives.MinBy(static life => life.Earliest);
        }
    }

    /// <summary>Patching against rewrapping; null where nothing is damaged or the life of new tape is not known.</summary>
    internal RepairComparison? Comparison => this.Repairs is { } repairs && this.NewTape is { } renewed
        ? new(this.Terms.Covered, repairs, this.Terms.Repair.Prices.Of(repairs), this.PlanBy, this.Terms.Repair.Rewrapping, renewed.Earliest, this.Terms.Repair.Discount)
        : null;

    internal ZincExposure Corrected(PredictionCheck check) => check.Corrected($"{this.Terms.Name}, read {this.Campaigns[^1].Day:yyyy-MM-dd}, {check.Measured.Law.Name}");

    internal IEnumerable<Finding> Findings()
    {
        RuleSet rules = RuleSet.Default;
        string name = this.Terms.Name;
        return new[]
        {
            this.Campaigns.SelectMany(campaign => campaign.Readings.Judge(rules, FormattableString.Invariant($"{name} {campaign.Day:yyyy-MM-dd}"))),
            this.Lives.SelectMany(life => life.Judge(rules, name)),
            this.Lives[^1].ThinSpots.Judge(this.Required, rules, name),
            this.Checks.SelectMany(check => check.Judge(rules, name)),
            this.ByRate.SelectMany(rate => rate.Judge(rules, name)),
            this.Extremes?.Judge(rules, name) ?? [],
            this.Repairs?.Judge(rules) ?? [],
            this.Comparison?.Judge(rules, name) ?? [],
        }.SelectMany(static part => part).Distinct();
    }

    private IEnumerable<RemainingLifeByRate> RatesOf(Length supplied, Campaign last)
    {
        var now = new ThicknessPoint(last.Age, last.Used.Mean);
        if (this.Campaigns.Count == 1)
        {
            return [new RemainingLifeByRate(supplied, now, this.Required)];
        }

        var before = new ThicknessPoint(this.Campaigns[^2].Age, this.Campaigns[^2].Used.Mean);
        return Enum.GetValues<RateChoice>().Select(choice => new RemainingLifeByRate(supplied, now, this.Required, before, choice));
    }

    // One greatest loss of each zone, the zones of one size, as the distribution of extremes wants them.
    private static (LargestLosses? Losses, string WhyNot) ExtremesOf(InspectionTerms terms, IReadOnlyDictionary<string, Length> thinnest)
    {
        if (terms.Zone is not { } zone)
        {
            return (null, "no zone_m2 in inspections.csv");
        }

        Length supplied = terms.Stock.Tape.Foil.Thickness;
        try
        {
            return (new LargestLosses(new ValueList<Length>(thinnest.Values.Select(thin => supplied - thin)), zone, terms.Covered, GumbelMethod.MaximumLikelihood), string.Empty);
        }
        catch (ArgumentException refused)
        {
            return (null, CsvRow.FirstLine(refused));
        }
    }
}
