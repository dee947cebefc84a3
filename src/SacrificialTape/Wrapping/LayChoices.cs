using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>What a lay needs to know besides surface, strip and lap.</summary>
/// <remarks>End lap: zero or more. Hand wander: zero or more. Passes: 1 to 20.</remarks>
public sealed record LayChoices
{
    private readonly StoredNumber endLapMm;
    private readonly StoredNumber wanderMm;

    /// <summary>Describes the choices.</summary>
    /// <param name="endLap">Lap of a ring or level turn on its own end.</param>
    /// <param name="handWander">How much narrower than set a lap may come out on site, because the hand wanders.</param>
    /// <param name="passes">How many times the lay is repeated over itself.</param>
    /// <param name="method">How the strip is laid.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public LayChoices(Length endLap, Length handWander, int passes = 1, ApplicationMethod method = ApplicationMethod.ByHand)
    {
        AcceptedRange zeroOrMore = AcceptedRange.AtLeast(0, "mm");
        this.endLapMm = new StoredNumber(zeroOrMore.Check(UnitConversions.Millimeters(endLap), nameof(endLap)));
        this.wanderMm = new StoredNumber(zeroOrMore.Check(UnitConversions.Millimeters(handWander), nameof(handWander)));
        AcceptedRange.Between(1, 20, "passes").Check(passes);
        this.Passes = passes;
        this.Method = Enum.IsDefined(method)
            ? method
            : throw new ArgumentOutOfRangeException(nameof(method), method, "Not a method known here.");
    }

    /// <summary>One pass by hand with the end lap and wander of the default rule set.</summary>
    public static LayChoices Default { get; } = FromRules(RuleSet.Default);

    /// <summary>Lap of a ring or level turn on its own end.</summary>
    public Length EndLap => Length.FromMillimeters(this.EndLapMm);

    /// <summary>How much narrower than set a lap may come out on site.</summary>
    public Length HandWander => Length.FromMillimeters(this.WanderMm);

    /// <summary>How many times the lay is repeated over itself.</summary>
    public int Passes { get; }

    /// <summary>How the strip is laid.</summary>
    public ApplicationMethod Method { get; }

    /// <summary>The end of an instruction: nothing for a single pass.</summary>
    internal string Repeated => this.Passes == 1
        ? string.Empty
        : string.Create(CultureInfo.InvariantCulture, $" Do all this {this.Passes} times, one pass over the other, with the laps of a pass not on the laps of the one below.");

    internal double EndLapMm => this.endLapMm.Bare;

    internal double WanderMm => this.wanderMm.Bare;

    /// <summary>Takes end lap and wander from a rule set.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="passes">How many times the lay is repeated over itself.</param>
    /// <param name="method">How the strip is laid.</param>
    public static LayChoices FromRules(RuleSet rules, int passes = 1, ApplicationMethod method = ApplicationMethod.ByHand)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return new(
            Length.FromMillimeters(rules.Number(RuleIds.MinimumEndLap, TradeUnit.Millimeter)),
            Length.FromMillimeters(rules.Number(RuleIds.HandWander, TradeUnit.Millimeter)),
            passes,
            method);
    }

    /// <summary>The choices in a few words.</summary>
    public override string ToString() => $"end lap {MeasureText.Write(this.EndLapMm, TradeUnit.Millimeter, 6)}, wander {MeasureText.Write(this.WanderMm, TradeUnit.Millimeter, 6)}, {this.Passes} pass(es), {this.Method}";
}
