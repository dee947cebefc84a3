using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>A patch of tape pressed onto the real surface on site, pulled off and measured before the work begins.</summary>
/// <remarks>
/// No limit of peel or of contact resistance that was made for this was found: state your own, from the data sheet or a
/// patch on a clean plate of the same steel pulled the same way. Peel: 0 to 100 N/mm. The number of a stiff foil holds its
/// bending too: compare like with like. A fresh contact says nothing of an old one.
/// </remarks>
public sealed record TrialPatch
{
    private readonly StoredNumber peel;
    private readonly StoredNumber wantedPeel;

    /// <summary>Describes a trial patch.</summary>
    /// <param name="wantedPeel">Least peel force over width.</param>
    /// <param name="allowedResistance">Most contact resistivity.</param>
    /// <param name="peel">Peel force over width; null when not measured.</param>
    /// <param name="resistance">Contact resistivity; null when not measured.</param>
    /// <param name="failure">Where it parted; null when not looked at.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public TrialPatch(
        ForcePerLength wantedPeel, ContactResistivity allowedResistance, ForcePerLength? peel, ContactResistivity? resistance, TrialPatchFailure? failure)
    {
        this.wantedPeel = new StoredNumber(AcceptedRange.AboveUpTo(0, 100, "N/mm").Check(UnitConversions.NewtonsPerMillimeter(wantedPeel), nameof(wantedPeel)));
        this.peel = peel is { } pulled
            ? new StoredNumber(AcceptedRange.Between(0, 100, "N/mm").Check(UnitConversions.NewtonsPerMillimeter(pulled), nameof(peel)))
            : default;
        _ = allowedResistance.OhmSquareCentimeters + (resistance?.OhmSquareCentimeters ?? 0);
        this.AllowedResistance = allowedResistance;
        this.Resistance = resistance;
        this.Failure = failure is { } seen && !Enum.IsDefined(seen)
            ? throw new ArgumentOutOfRangeException(nameof(failure), failure, "Not a way of parting known here.")
            : failure;
    }

    /// <summary>Least peel force over width.</summary>
    public ForcePerLength WantedPeel => ForcePerLength.FromNewtonsPerMillimeter(this.wantedPeel.Bare);

    /// <summary>Most contact resistivity.</summary>
    public ContactResistivity AllowedResistance { get; }

    /// <summary>Peel force over width.</summary>
    public ForcePerLength? Peel => this.peel.IsSet ? ForcePerLength.FromNewtonsPerMillimeter(this.peel.Bare) : null;

    /// <summary>Contact resistivity.</summary>
    public ContactResistivity? Resistance { get; }

    /// <summary>Where it parted.</summary>
    public TrialPatchFailure? Failure { get; }

    internal StoredNumber PeelNmm => this.peel;

    internal double WantedPeelNmm => this.wantedPeel.Bare;

    /// <summary>Holds the patch against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (!this.peel.IsSet)
        {
            yield return rules[RuleIds.NotInspected].State($"{subject}, peel of the trial patch");
        }
        else if (WithAllowance.Below(this.peel.Bare, this.wantedPeel.Bare))
        {
            yield return rules[RuleIds.TrialPatchPeel].State(
                subject, new Measure(this.peel.Bare, TradeUnit.NewtonPerMillimeter), new Measure(this.wantedPeel.Bare, TradeUnit.NewtonPerMillimeter));
        }

        if (this.Resistance is not { } resistance)
        {
            yield return rules[RuleIds.NotInspected].State($"{subject}, contact resistance of the trial patch");
        }
        else if (WithAllowance.Above(resistance.OhmSquareCentimeters, this.AllowedResistance.OhmSquareCentimeters))
        {
            yield return rules[RuleIds.TrialPatchResistance].State(
                subject,
                new Measure(resistance.OhmSquareCentimeters, TradeUnit.OhmSquareCentimeter),
                new Measure(this.AllowedResistance.OhmSquareCentimeters, TradeUnit.OhmSquareCentimeter));
        }

        switch (this.Failure)
        {
            case null:
                yield return rules[RuleIds.NotInspected].State($"{subject}, where the trial patch parted");
                break;
            case TrialPatchFailure.CleanOffSurface:
                yield return rules[RuleIds.TrialPatchOffSurface].State(subject);
                break;
            case TrialPatchFailure.TookPaintOrScale:
                yield return rules[RuleIds.TrialPatchTookPaint].State(subject);
                break;
        }
    }

    /// <summary>What was measured, as invariant text.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"trial patch: peel {(this.peel.IsSet ? MeasureText.Write(this.peel.Bare, TradeUnit.NewtonPerMillimeter, 6) : "not measured")}, resistance {this.Resistance?.ToString() ?? "not measured"}, {this.Failure?.ToString() ?? "parting not looked at"}");
}
