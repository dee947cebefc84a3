using SacrificialTape.Exposure;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;

namespace PlantSurvey;

/// <summary>The life of one line with its uncertainty, or why there is none.</summary>
internal sealed class LineLife
{
    // Coupons state their rate with twice its standard uncertainty to both sides.
    private const double BelowTwoDeviations = 0.02275;

    private LineLife(LineEstimate line, LineNotes notes, LifeDistribution? distribution, string whyNot)
    {
        this.Line = line;
        this.Notes = notes;
        this.Distribution = distribution;
        this.WhyNot = whyNot;
    }

    internal LineEstimate Line { get; }

    internal LineNotes Notes { get; }

    internal LifeDistribution? Distribution { get; }

    internal string WhyNot { get; }

    internal string Exposure => this.Notes.Exposure?.Name ?? this.Line.Life.Exposure.Name;

    internal bool Stops => this.Line.Findings.Any(static finding => finding.Severity == Severity.Stop);

    /// <summary>The law that gives the earliest life: the one to design for.</summary>
    internal ILossLaw EarliestLaw => this.Line.Life.ByLaw.MinBy(static life => life.Earliest)!.Law;

    /// <summary>Hot-dip zinc on steel of that thickness, where the survey states it.</summary>
    internal HotDipComparison? HotDip(Probability confidence) => this.Distribution is { LayersEverywhere: > 0 } life && this.Notes.SteelThickness is { } steel
        ? new(life, HotDipCoating.Iso1461(steel, HotDipValue.Mean), confidence)
        : null;

    internal static IEnumerable<LineLife> Of(Survey survey, JobEstimate estimate) =>
        estimate.Lines.Select(line => Of(line, survey.Notes[line.Line.Tag], survey.Choices.Life));

    private static LineLife Of(LineEstimate line, LineNotes notes, LifeChoices choices)
    {
        ZincExposure exposure = line.Life.Exposure;
        RateRange range = exposure.FirstYear;
        if (line.Life.LayersEverywhere == 0)
        {
            return new(line, notes, null, "not covered everywhere");
        }

        if (range.Lowest.MicrometersPerYear == 0)
        {
            return new(line, notes, null, "its rate has no lower bound");
        }

        if (exposure.LogNormal is null && notes.Exposure?.Spread is null && range.Lowest == range.Highest)
        {
            return new(line, notes, null, "one rate without a spread: state s");
        }

        try
        {
            var given = new LifeUncertainty(Rate(exposure, notes.Exposure, choices), Growth(exposure, choices), choices.Usable, ToleranceShape.Triangular);
            return new(line, notes, new LifeDistribution(line.Life.Foil, line.Life.LayersEverywhere, given), string.Empty);
        }
        catch (ArgumentOutOfRangeException refused)
        {
            // Bounds so close, or so far apart, that the library takes no spread from them.
            return new(line, notes, null, CsvRow.FirstLine(refused));
        }
    }

    private static UncertainRate Rate(ZincExposure exposure, SurveyExposure? named, LifeChoices choices) => (exposure, named) switch
    {
        ({ LogNormal: not null }, _) => UncertainRate.From(exposure),
        (_, { Spread: { } s }) => UncertainRate.Of(new LogNormalRate(exposure.FirstYear.Highest, s), SurveyExposure.StatedSpread),
        (_, { Kind: "coupon" }) => UncertainRate.FromBounds(exposure.FirstYear, Probability.FromFraction(BelowTwoDeviations), exposure.Basis),
        _ => UncertainRate.FromBounds(exposure.FirstYear, choices.Below, exposure.Basis),
    };

    // The loss laws of the open air hold in air alone.
    private static LossGrowth Growth(ZincExposure exposure, LifeChoices choices) => exposure.Rate.Medium switch
    {
        ExposureMedium.Soil => LossGrowth.Under(LawsByMedium.For(exposure)[0]),
        ExposureMedium.Air when choices.ByPowerLaw => LossGrowth.PowerLaw(UncertainExponent.Zinc, AfterTwentyYears.Tangent),
        _ => LossGrowth.Linear,
    };
}
