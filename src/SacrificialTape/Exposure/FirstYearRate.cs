using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Exposure;

/// <summary>How fast a metal goes in its first year at a place: a range, how it is known, and what must be said with it.</summary>
/// <remarks>
/// Zinc for the tape, carbon steel for bare spots. Rates are per face. Whatever brings a rate in (a category, the air of
/// the site, a coupon, a table) comes out as this one type.
/// </remarks>
public sealed partial record FirstYearRate
{
    private readonly ValueList<RateConcern> concerns;

    // Density of a coupon, kg/m3; unset for what was not weighed.
    private readonly StoredNumber weighedAt;

    private FirstYearRate(
        Metal metal,
        string name,
        ExposureMedium medium,
        RateRange range,
        Basis basis,
        CorrosivityCategory? category = null,
        LogNormalRate? logNormal = null,
        ValueList<RateConcern>? concerns = null,
        Density? density = null,
        SoilModel? soil = null)
    {
        this.Metal = metal;
        this.Name = name;
        this.Medium = medium;
        this.Range = range;
        this.Basis = basis;
        this.Category = category;
        this.LogNormal = logNormal;
        this.concerns = concerns ?? [];
        this.Soil = soil;
        this.weighedAt = density is { } known ? new StoredNumber(UnitConversions.KilogramsPerCubicMeter(known)) : default;
    }

    /// <summary>The metal.</summary>
    public Metal Metal { get; }

    /// <summary>A short name for tables.</summary>
    public string Name { get; }

    /// <summary>What surrounds the metal.</summary>
    public ExposureMedium Medium { get; }

    /// <summary>Lowest and highest first-year rate.</summary>
    public RateRange Range { get; }

    /// <summary>How the rate is known.</summary>
    public Basis Basis { get; }

    /// <summary>The category, where the rate comes from one.</summary>
    public CorrosivityCategory? Category { get; }

    /// <summary>Middle and s of a log-normal error, where the source gives them.</summary>
    public LogNormalRate? LogNormal { get; }

    /// <summary>By which numbers the loss goes on after the first year, in soil; null elsewhere.</summary>
    public SoilModel? Soil { get; }

    /// <summary>Whether the highest rate in air lies above category CX, in the unit that was measured.</summary>
    public bool AboveCategories => this.Medium == ExposureMedium.Air && this.CategoryOf(this.Range.Highest) is null;

    /// <summary>The whole range of a category.</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="category">C1 to CX, found for this metal: a site can be of another category for another metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a category, or not a metal.</exception>
    public static FirstYearRate FromCategory(Metal metal, CorrosivityCategory category) => new(
        metal,
        category.ToString(),
        ExposureMedium.Air,
        Corrosivity.RatesOf(category, metal),
        Corrosivity.BasisOf(category, metal),
        category);

    /// <summary>What was measured in a first year in the open air.</summary>
    /// <param name="metal">The metal.</param>
    /// <param name="lowest">The lowest rate found.</param>
    /// <param name="highest">The highest rate found, at least the lowest.</param>
    /// <param name="note">What was measured, where and when.</param>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The highest rate is below the lowest.</exception>
    public static FirstYearRate FromMeasurement(Metal metal, CorrosionRate lowest, CorrosionRate highest, string note) =>
        new(Known(metal), "measured", ExposureMedium.Air, new RateRange(lowest, highest), Basis.OwnExperience(note));

    /// <summary>What a dose-response function gives for the air of a site: its middle, s, and the interval they make.</summary>
    /// <param name="estimate">The estimate.</param>
    public static FirstYearRate From(DoseResponse estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return new(
            estimate.Metal,
            "dose-response",
            ExposureMedium.Air,
            estimate.LogNormal.Range,
            estimate.Basis,
            logNormal: estimate.LogNormal,
            concerns: new ValueList<RateConcern>(estimate.Outside()));
    }

    /// <summary>What a coupon lost; with the range that its uncertainty makes, if that is known.</summary>
    /// <param name="metal">The metal of the coupon.</param>
    /// <param name="coupon">The coupon.</param>
    /// <param name="note">What was exposed, where and when.</param>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    public static FirstYearRate From(Metal metal, CouponLoss coupon, string note)
    {
        ArgumentNullException.ThrowIfNull(coupon);
        return new(
            Known(metal),
            "coupon",
            ExposureMedium.Air,
            coupon.Range,
            Basis.OwnExperience(note),
            concerns: [Over(coupon.Time)],
            density: coupon.Density);
    }

    /// <summary>The mean rate of a thickness lost over a time.</summary>
    /// <remarks>Over several years the mean is below the first year's rate, for loss slows down: a finding says so.</remarks>
    /// <param name="metal">The metal.</param>
    /// <param name="loss">Thickness lost from one face, zero or more.</param>
    /// <param name="time">The time it took, more than zero.</param>
    /// <param name="note">What was measured, where and when.</param>
    /// <exception cref="ArgumentException">The note is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The loss is negative or the time not positive.</exception>
    public static FirstYearRate FromThicknessLoss(Metal metal, Length loss, Duration time, string note)
    {
        CorrosionRate rate = CorrosionRate.FromLoss(loss, time);
        return new(
            Known(metal), "thickness loss", ExposureMedium.Air, new RateRange(rate, rate), Basis.OwnExperience(note), concerns: [Over(time)]);
    }

    /// <summary>Zinc in water: printed rates of immersed hot-dip coatings.</summary>
    /// <param name="water">The kind of water.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such kind.</exception>
    public static FirstYearRate OfZincIn(WaterKind water)
    {
        (string name, double low, double high) = water switch
        {
            WaterKind.Sea => ("sea water", 15.0, 25.0),
            WaterKind.TemperateSea => ("temperate sea water", 10, 20),
            WaterKind.HardFresh => ("hard fresh water", 2.5, 5),
            WaterKind.SoftFresh => ("soft fresh water", 5, 10),
            WaterKind.Distilled => ("distilled water", 50, 200),
            _ => throw new ArgumentOutOfRangeException(nameof(water), water, "No rate is known for such a water."),
        };
        return new(
            Metal.Zinc,
            name,
            ExposureMedium.Water,
            new RateRange(CorrosionRate.FromMicrometersPerYear(low), CorrosionRate.FromMicrometersPerYear(high)),
            water == WaterKind.TemperateSea ? ExposureSources.TemperateSea : ExposureSources.Water,
            concerns: [new RateConcern(RuleIds.ImmersedZinc)]);
    }

    /// <summary>
    /// Design loss in the selected fill of reinforced-soil walls: zinc in its first two years, or carbon steel once its
    /// zinc is gone (recalled). The years after are in <c>PiecewiseLoss.ZincInReinforcedSoil</c>.
    /// </summary>
    /// <param name="metal">The metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a metal.</exception>
    public static FirstYearRate InReinforcedSoil(Metal metal)
    {
        CorrosionRate rate = Known(metal) == Metal.Zinc ? SoilDesign.ZincAtFirst : SoilDesign.Steel;
        return new(
            metal,
            "reinforced soil",
            ExposureMedium.Soil,
            new RateRange(rate, rate),
            metal == Metal.Zinc ? ExposureSources.ReinforcedSoil : ExposureSources.ReinforcedSoilSteel,
            concerns: [new RateConcern(RuleIds.BuriedMetal)],
            soil: SoilModel.ReinforcedFill);
    }

    /// <summary>Holds the rate against the rules: what was recalled, estimated beyond its data, or measured for another case.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (this.Basis.Kind == BasisKind.Recalled)
        {
            yield return rules[this.Category is null ? RuleIds.RecalledRate : RuleIds.RecalledCategory].State(subject);
        }

        foreach (RateConcern concern in this.concerns)
        {
            if (concern.Rule != RuleIds.FirstYearTolerance || OtherThanAYear(rules, concern.Measured!.Value))
            {
                yield return rules[concern.Rule].State(subject, concern.Measured, concern.Limit);
            }
        }

        if (this.AboveCategories)
        {
            yield return rules[RuleIds.RateAboveCategories].State(
                subject,
                new Measure(this.Range.Highest.MicrometersPerYear, TradeUnit.MicrometerPerYear),
                new Measure(Corrosivity.RatesOf(CorrosivityCategory.CX, this.Metal).Highest.MicrometersPerYear, TradeUnit.MicrometerPerYear));
        }
    }

    /// <summary>Name and range.</summary>
    public override string ToString() => $"{this.Name}: {this.Range}";

    // With the density of a coupon the rate goes back to the mass that was measured.
    private CorrosivityCategory? CategoryOf(CorrosionRate rate) => this.weighedAt.IsSet
        ? Corrosivity.CategoryOf(rate.ToMassLoss(Density.FromKilogramsPerCubicMeter(this.weighedAt.Bare)), this.Metal)
        : Corrosivity.CategoryOf(rate, this.Metal);

    private static bool OtherThanAYear(RuleSet rules, Measure time) =>
        WithAllowance.Above(Math.Abs(time.In(TradeUnit.Year) - 1), rules.Number(RuleIds.FirstYearTolerance, TradeUnit.Year));

    private static RateConcern Over(Duration time) => new(RuleIds.FirstYearTolerance, Measure.Of(time));

    private static Metal Known(Metal metal) => Enum.IsDefined(metal)
        ? metal
        : throw new ArgumentOutOfRangeException(nameof(metal), metal, "Not a metal known here.");
}
