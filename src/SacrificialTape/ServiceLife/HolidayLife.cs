using SacrificialTape.Galvanic;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>How long one layer of zinc lasts beside bare steel, at the spot where it goes fastest, as a range.</summary>
/// <remarks>
/// Earliest: least foil at the highest demand and the highest own corrosion. Latest: nominal foil at the lowest of both.
/// Demand is an average over time and stays the same; the foil is not thickened by a layer under it, which its edge lays bare too.
/// </remarks>
public sealed record HolidayLife : IHasWorkings
{
    /// <summary>Estimates a life.</summary>
    /// <param name="foil">The foil.</param>
    /// <param name="feed">How much bare steel the zinc feeds.</param>
    /// <param name="demand">What bare steel draws.</param>
    /// <param name="consumption">How the zinc is used up: with own corrosion apart, or at a practical capacity.</param>
    /// <param name="usable">The share of the foil that may be used up.</param>
    public HolidayLife(Foil foil, ZincFeed feed, CurrentDemand demand, ZincConsumption consumption, Utilisation usable)
    {
        ArgumentNullException.ThrowIfNull(foil);
        ArgumentNullException.ThrowIfNull(feed);
        ArgumentNullException.ThrowIfNull(demand);
        ArgumentNullException.ThrowIfNull(consumption);
        this.Foil = foil;
        this.Usable = usable;
        this.Feed = feed;
        this.Demand = demand;
        this.Consumption = consumption;
        var exposure = (consumption as OwnCorrosionAndDemand)?.Exposure;
        this.Earliest = Lifetime.OfYears(this.Years(foil.LeastThicknessMm, demand.HighestAmperesPerM2, exposure?.FirstYear.Highest));
        this.Latest = Lifetime.OfYears(this.Years(foil.ThicknessMm, demand.LowestAmperesPerM2, exposure?.FirstYear.Lowest));
    }

    /// <summary>The foil.</summary>
    public Foil Foil { get; }

    /// <summary>The share of the foil that may be used up.</summary>
    public Utilisation Usable { get; }

    /// <summary>How much bare steel the zinc feeds.</summary>
    public ZincFeed Feed { get; }

    /// <summary>What bare steel draws.</summary>
    public CurrentDemand Demand { get; }

    /// <summary>How the zinc is used up.</summary>
    public ZincConsumption Consumption { get; }

    /// <summary>The earliest end that is plausible: the one to design for.</summary>
    public Lifetime Earliest { get; }

    /// <summary>The latest end that is plausible.</summary>
    public Lifetime Latest { get; }

    /// <summary>Recession of the zinc by the highest demand of the bare steel alone.</summary>
    [BasisOf(typeof(HolidayFormulas), nameof(HolidayFormulas.DemandRate))]
    public CorrosionRate HighestDemandRate => CorrosionRate.FromMicrometersPerYear(
        this.Rate(this.Feed.BarePerZincRatio, this.Demand.HighestAmperesPerM2, default(NoSteps)));

    /// <summary>Holds the life against a requirement and the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="required">The life that is required.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(Lifetime required, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (Shorter(this.Latest, required))
        {
            yield return rules[RuleIds.HolidayLifeFallsShort].State(subject, AsMeasure(this.Latest), AsMeasure(required));
        }
        else if (Shorter(this.Earliest, required))
        {
            yield return rules[RuleIds.HolidayLifeMayFallShort].State(subject, AsMeasure(this.Earliest), AsMeasure(required));
        }

        if (this.Consumption is DemandAtPracticalCapacity { Capacity: { } capacity })
        {
            if (capacity.IsOfCastAlloy)
            {
                yield return rules[RuleIds.CastAlloyCapacity].State(subject);
            }

            if (capacity.Basis.Kind == BasisKind.Recalled)
            {
                yield return rules[RuleIds.RecalledCapacity].State(subject);
            }
        }
        else if (this.Consumption is OwnCorrosionAndDemand own)
        {
            if (own.Exposure.Basis.Kind == BasisKind.Recalled)
            {
                yield return rules[RuleIds.RecalledCategory].State(subject);
            }

            if (own.Law.Basis.Kind == BasisKind.Recalled)
            {
                yield return rules[RuleIds.RecalledLifeValue].State(subject);
            }
        }

        yield return rules[RuleIds.OtherElectricalSystems].State(subject);
        yield return rules[RuleIds.NoPublishedLife].State(subject);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        double zinc = HolidayKernel.Zinc(this.Usable.Fraction, this.Foil.LeastThicknessMm * 1000, steps);
        double rate = this.Rate(this.Feed.Solve(steps), this.Demand.HighestAmperesPerM2, steps);
        if (this.Consumption is not OwnCorrosionAndDemand own || own.Exposure.FirstYear.Highest.MicrometersPerYear == 0)
        {
            _ = HolidayKernel.DemandYears(zinc, rate, steps);
            return steps.Under("Earliest life of zinc beside bare steel");
        }

        double share = this.Earliest.IsUnlimited ? zinc : HolidayKernel.OwnShare(zinc, rate, this.Earliest.Years, steps);
        Workings law = own.Law.ShowTimeToLoss(own.Exposure.FirstYear.Highest, Length.FromMicrometers(share));
        return new Workings(
            "Earliest life of zinc beside bare steel",
            new ValueList<WorkingStep>(steps.Under("root").Steps.Concat(law.Steps)));
    }

    /// <summary>The range in a few words.</summary>
    public override string ToString() => $"{this.Earliest} to {this.Latest}";

    private static bool Shorter(Lifetime life, Lifetime required) =>
        !life.IsUnlimited && (required.IsUnlimited || WithAllowance.Below(life.Years, required.Years));

    private static Measure? AsMeasure(Lifetime life) => life.IsUnlimited ? null : new Measure(life.Years, TradeUnit.Year);

    private double Rate<TSteps>(double barePerZinc, double amperesPerM2, TSteps steps)
        where TSteps : struct, IStepRecorder => HolidayKernel.DemandRate(
            barePerZinc, amperesPerM2, this.Consumption.AmpereHoursPerKilogram, this.Foil.KilogramsPerCubicMeter, steps);

    private double Years(double foilMm, double amperesPerM2, CorrosionRate? own)
    {
        double zinc = HolidayKernel.Zinc(this.Usable.Fraction, foilMm * 1000, default(NoSteps));
        double demand = this.Rate(this.Feed.BarePerZincRatio, amperesPerM2, default(NoSteps));
        if (own is not { } rate || this.Consumption is not OwnCorrosionAndDemand { Law: { } law })
        {
            return HolidayKernel.DemandYears(zinc, demand, default(NoSteps));
        }

        Lifetime alone = law.TimeToLoss(rate, Length.FromMicrometers(zinc));
        return HolidayKernel.BothYears(
            years => UnitConversions.Micrometers(law.Loss(rate, UnitConversions.FromYears(years))), alone.Years, zinc, demand);
    }
}
