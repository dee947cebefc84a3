using System.Globalization;
using SacrificialTape.Costing;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>Patching against rewrapping: by share of the area, by remaining life, and by the cost of a year of each.</summary>
/// <remarks>
/// Covered: more than zero, at least the area of the patches. Patching buys the remaining life of the old tape, rewrapping the life of the new; each is
/// spread over its life as an equivalent annual cost. While a year on patches costs less than a year on new tape, rewrapping
/// waits.
/// </remarks>
/// <example><code source="PatchesAndRepairPage.cs" region="patch-or-rewrap" /></example>
public sealed record RepairComparison : IHasWorkings
{
    private readonly StoredNumber coveredM2;

    /// <summary>Compares the two.</summary>
    /// <param name="covered">Area covered by the tape.</param>
    /// <param name="repairs">The patches.</param>
    /// <param name="patching">What patching costs; see <see cref="RepairPrices"/>.</param>
    /// <param name="remaining">Remaining life of the old tape, zero or more; null when it is undetermined.</param>
    /// <param name="rewrapping">What rewrapping costs, removal of the old tape included.</param>
    /// <param name="newLife">Life of the new tape: take its earliest.</param>
    /// <param name="rate">The discount rate.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    /// <exception cref="ArgumentException">Two currencies are mixed.</exception>
    public RepairComparison(Area covered, RepairList repairs, Money patching, Duration? remaining, Money rewrapping, Lifetime newLife, DiscountRate rate)
    {
        ArgumentNullException.ThrowIfNull(repairs);
        this.coveredM2 = new StoredNumber(AcceptedRange.AtLeast(repairs.PatchedM2, "m2").Noting("the area of the patches")
            .Check(UnitConversions.SquareMeters(covered), nameof(covered)));
        this.Repairs = repairs;
        this.Patching = patching.Price(nameof(patching));
        this.Rewrapping = patching.Same(rewrapping.Price(nameof(rewrapping)));
        if (remaining is { } known)
        {
            AcceptedRange.Between(0, TimeValue.MostYears, "a").Check(UnitConversions.Years(known), nameof(remaining));
        }

        this.Remaining = remaining;
        this.NewLife = newLife;
        this.Rate = rate;
        this.RewrappingPerYear = new TimeValue(rate, newLife).EquivalentAnnualCost(rewrapping);
        this.PatchingPerYear = remaining is { } left && UnitConversions.Years(left) > 0
            ? new TimeValue(rate, Lifetime.Of(left)).EquivalentAnnualCost(patching)
            : null;
    }

    /// <summary>Area covered by the tape.</summary>
    public Area Covered => Area.FromSquareMeters(this.coveredM2.Bare);

    /// <summary>The patches.</summary>
    public RepairList Repairs { get; }

    /// <summary>What patching costs.</summary>
    public Money Patching { get; }

    /// <summary>Remaining life of the old tape; null when it is undetermined.</summary>
    public Duration? Remaining { get; }

    /// <summary>What rewrapping costs.</summary>
    public Money Rewrapping { get; }

    /// <summary>Life of the new tape.</summary>
    public Lifetime NewLife { get; }

    /// <summary>The discount rate.</summary>
    public DiscountRate Rate { get; }

    /// <summary>Cost of a year on patches; null without a remaining life to spread it over.</summary>
    public Money? PatchingPerYear { get; }

    /// <summary>Cost of a year on new tape.</summary>
    public Money RewrappingPerYear { get; }

    /// <summary>Weighs the two.</summary>
    /// <param name="rules">The rule set.</param>
    public RepairDecision Decide(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        var reasons = new List<string>();
        double share = PatchKernel.Share(this.Repairs.PatchedM2, this.coveredM2.Bare, default(NoSteps));
        Finding? broken = rules[RuleIds.PatchedShare].Judge(new Measure(share, TradeUnit.Percent), "repairs");
        if (broken is not null)
        {
            reasons.Add(string.Create(CultureInfo.InvariantCulture, $"{share:0.##} % of the area would be patches, allowed at most {broken.Limit}"));
        }

        if (this.Remaining is { } left && UnitConversions.Years(left) == 0)
        {
            reasons.Add("the old tape is used up");
            return new RepairDecision(RepairVerdict.Rewrap, new ValueList<string>(reasons));
        }

        if (this.PatchingPerYear is not { } patching)
        {
            reasons.Add("the remaining life is undetermined, so a year on patches has no price");
            return new RepairDecision(broken is null ? RepairVerdict.Undecided : RepairVerdict.Rewrap, new ValueList<string>(reasons));
        }

        (double old, double renewed) = ((double)patching.Amount, (double)this.RewrappingPerYear.Amount);
        bool tie = WithAllowance.AtMost(old, renewed) && WithAllowance.AtLeast(old, renewed);
        reasons.Add($"a year on patches costs {patching.Rounded(2)}, on new tape {this.RewrappingPerYear.Rounded(2)}");
        RepairVerdict cheaper = tie ? RepairVerdict.Undecided : old < renewed ? RepairVerdict.Patch : RepairVerdict.Rewrap;

        // Cost alone does not override the share: the two disagree, and someone must look.
        RepairVerdict verdict = broken is null ? cheaper : cheaper == RepairVerdict.Patch ? RepairVerdict.Undecided : RepairVerdict.Rewrap;
        return new RepairDecision(verdict, new ValueList<string>(reasons));
    }

    /// <summary>Says when more of the area would be patches than the rules allow.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        double share = PatchKernel.Share(this.Repairs.PatchedM2, this.coveredM2.Bare, default(NoSteps));
        return rules[RuleIds.PatchedShare].Judge(new Measure(share, TradeUnit.Percent), subject) is { } finding ? [finding] : [];
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = PatchKernel.Share(this.Repairs.PatchedM2, this.coveredM2.Bare, steps);
        var all = new List<WorkingStep>(steps.Under("share").Steps);
        if (this.Remaining is { } left && UnitConversions.Years(left) > 0)
        {
            all.AddRange(new TimeValue(this.Rate, Lifetime.Of(left)).ShowWorkings().Steps);
        }

        all.AddRange(new TimeValue(this.Rate, this.NewLife).ShowWorkings().Steps);
        return new Workings("Patching against rewrapping", new ValueList<WorkingStep>(all));
    }

    /// <summary>The two in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"patching {this.Patching}, {(this.PatchingPerYear is { } a ? a.Rounded(2).ToString() : "unknown")} a year; rewrapping {this.Rewrapping}, {this.RewrappingPerYear.Rounded(2)} a year");
}
