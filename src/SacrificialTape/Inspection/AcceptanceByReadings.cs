using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>Thickness readings held against a nominal thickness by one of the trade's rules.</summary>
/// <remarks>
/// Readings and nominal: more than 0, at most 20 mm. The rules are those of paint documents and a choice: on tape they find
/// a missing layer or a wrong stock, not a thin film. Most allowed is judged only where it is stated.
/// </remarks>
public sealed record AcceptanceByReadings
{
    private static readonly AcceptedRange Thickness = AcceptedRange.AboveUpTo(0, 20_000, "um");

    private readonly StoredNumber nominal;
    private readonly StoredNumber most;
    private readonly ValueList<StoredNumber> values;

    /// <summary>Holds readings against a rule.</summary>
    /// <param name="readings">The readings, at least one.</param>
    /// <param name="nominal">The nominal thickness wanted, adhesive and layers as the gauge counts them.</param>
    /// <param name="rule">The rule.</param>
    /// <param name="rules">The rule set: its shares of the nominal and of the readings.</param>
    /// <param name="subject">How findings name the place.</param>
    /// <param name="wanted">How many readings were wanted; left out: not judged.</param>
    /// <param name="most">Most allowed; left out: not judged.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or there is no such rule.</exception>
    /// <exception cref="ArgumentException">There is no reading, or the subject is empty.</exception>
    public AcceptanceByReadings(
        IEnumerable<Length> readings, Length nominal, AcceptanceRule rule, RuleSet rules, string subject, SamplingCount? wanted = null, Length? most = null)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentException.ThrowIfNullOrWhiteSpace(subject);
        this.Rule = Enum.IsDefined(rule) ? rule : throw new ArgumentOutOfRangeException(nameof(rule), rule, "Not an acceptance rule known here.");
        double[] um = [.. readings.Select(static one => Thickness.Check(UnitConversions.Micrometers(one), nameof(readings)))];
        if (um.Length == 0)
        {
            throw new ArgumentException("There is no reading.", nameof(readings));
        }

        this.nominal = new StoredNumber(Thickness.Check(UnitConversions.Micrometers(nominal), nameof(nominal)));
        this.most = most is { } given ? new StoredNumber(Thickness.Check(UnitConversions.Micrometers(given), nameof(most))) : default;
        this.values = new ValueList<StoredNumber>(um.Select(static one => new StoredNumber(one)));
        this.Wanted = wanted;
        this.Subject = subject;
        this.Findings = new ValueList<Finding>(AcceptanceChecks.Readings(this.Rule, um, this.nominal.Bare, this.most, wanted, rules, subject).OfType<Finding>());
    }

    /// <summary>The rule.</summary>
    public AcceptanceRule Rule { get; }

    /// <summary>How many readings.</summary>
    public int Readings => this.values.Count;

    /// <summary>The readings in their order.</summary>
    public ValueList<Length> Values => new(this.values.Select(static one => Length.FromMicrometers(one.Bare)));

    /// <summary>How many readings were wanted, where that was judged.</summary>
    public SamplingCount? Wanted { get; }

    /// <summary>How findings name the place.</summary>
    public string Subject { get; }

    /// <summary>The nominal thickness wanted.</summary>
    public Length Nominal => Length.FromMicrometers(this.nominal.Bare);

    /// <summary>Most allowed, if it was stated.</summary>
    public Length? Most => this.most.IsSet ? Length.FromMicrometers(this.most.Bare) : null;

    /// <summary>Why it is not accepted.</summary>
    public ValueList<Finding> Findings { get; }

    /// <summary>Whether nothing speaks against it.</summary>
    public bool IsAccepted => this.Findings.All(static one => one.Severity == Severity.Note);

    internal StoredNumber MostUm => this.most;

    internal double NominalUm => this.nominal.Bare;

    internal IEnumerable<double> ValuesUm => this.values.Select(static one => one.Bare);

    /// <summary>Rule, count and verdict.</summary>
    public override string ToString() => FormattableString.Invariant(
        $"{this.Rule}, {this.Readings} reading(s) against {this.nominal.Bare:0.##} um: {(this.IsAccepted ? "accepted" : "not accepted")}");
}
