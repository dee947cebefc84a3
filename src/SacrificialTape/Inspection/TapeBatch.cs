using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Inspection;

/// <summary>The batch a roll came from, when it was made, until when it may be laid, and how it was stored.</summary>
/// <remarks>What is not known is null, and leaves a finding: an unknown batch is never taken as good.</remarks>
public sealed record TapeBatch
{
    /// <summary>Describes a batch.</summary>
    /// <param name="number">Its number as printed on the roll; null when not known.</param>
    /// <param name="madeOn">When it was made; null when not known.</param>
    /// <param name="useBefore">The last day on which it may be laid; null when not known.</param>
    /// <param name="allowedStorage">The storage that its data sheet allows; null when not known.</param>
    /// <param name="stored">Lowest and highest temperature recorded in the store; null when not recorded.</param>
    /// <exception cref="ArgumentException">The number is empty, or the last day lies before the day of making.</exception>
    public TapeBatch(string? number, DateOnly? madeOn, DateOnly? useBefore, TapeBatchStorage? allowedStorage, TapeBatchStorage? stored)
    {
        if (number is not null)
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(number);
        }

        if (useBefore < madeOn)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"The batch may be laid until {useBefore:yyyy-MM-dd}, before it was made on {madeOn:yyyy-MM-dd}."), nameof(useBefore));
        }

        this.Number = number;
        this.MadeOn = madeOn;
        this.UseBefore = useBefore;
        this.AllowedStorage = allowedStorage;
        this.Stored = stored;
    }

    /// <summary>Nothing known of the batch.</summary>
    public static TapeBatch Unknown { get; } = new(null, null, null, null, null);

    /// <summary>Its number.</summary>
    public string? Number { get; }

    /// <summary>When it was made.</summary>
    public DateOnly? MadeOn { get; }

    /// <summary>The last day on which it may be laid.</summary>
    public DateOnly? UseBefore { get; }

    /// <summary>The storage that its data sheet allows.</summary>
    public TapeBatchStorage? AllowedStorage { get; }

    /// <summary>Lowest and highest temperature recorded in the store.</summary>
    public TapeBatchStorage? Stored { get; }

    /// <summary>Holds the batch against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="laidOn">The day on which it is laid.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(DateOnly laidOn, RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentException.ThrowIfNullOrWhiteSpace(subject);
        if (this.Number is null)
        {
            yield return rules[RuleIds.BatchUnknown].State(subject);
        }

        if (this.UseBefore is not { } last)
        {
            yield return rules[RuleIds.BatchExpiryUnknown].State(subject);
        }
        else if (laidOn > last)
        {
            yield return rules[RuleIds.BatchExpired].State(Said(subject, "use before", last, laidOn));
        }

        if (this.MadeOn is { } made && laidOn < made)
        {
            yield return rules[RuleIds.BatchLaidBeforeMade].State(Said(subject, "made on", made, laidOn));
        }

        if (this.AllowedStorage is not { } allowed || this.Stored is not { } stored)
        {
            yield return rules[RuleIds.BatchStorageUnknown].State(subject);
            yield break;
        }

        if (WithAllowance.Below(stored.Low, allowed.Low))
        {
            yield return rules[RuleIds.BatchStorageOutside].State(
                subject, new Measure(stored.Low, TradeUnit.DegreeCelsius), new Measure(allowed.Low, TradeUnit.DegreeCelsius));
        }

        if (WithAllowance.Above(stored.High, allowed.High))
        {
            yield return rules[RuleIds.BatchStorageOutside].State(
                subject, new Measure(stored.High, TradeUnit.DegreeCelsius), new Measure(allowed.High, TradeUnit.DegreeCelsius));
        }
    }

    /// <summary>Number, dates and storage as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"batch {this.Number ?? "unknown"}, made {(this.MadeOn is { } made ? made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "unknown")}, use before {(this.UseBefore is { } last ? last.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "unknown")}, stored at {this.Stored?.ToString() ?? "unknown"}");

    private static string Said(string subject, string what, DateOnly day, DateOnly laidOn) =>
        string.Create(CultureInfo.InvariantCulture, $"{subject}, {what} {day:yyyy-MM-dd}, laid on {laidOn:yyyy-MM-dd}");
}
