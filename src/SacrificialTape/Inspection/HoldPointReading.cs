using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.SiteConditions;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>What was measured or seen at a hold point, by whom and when.</summary>
public sealed record HoldPointReading
{
    private HoldPointReading(
        HoldPointKind kind, string by, DateTimeOffset at, Measure? measured = null, Measure? endLap = null, bool good = true,
        SurfaceReading? surface = null, TrialPatch? patch = null, AcceptanceByReadings? thickness = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        this.Kind = kind;
        this.By = by;
        this.At = at;
        this.Measured = measured;
        this.EndLap = endLap;
        this.IsGood = good;
        this.Surface = surface;
        this.Patch = patch;
        this.Thickness = thickness;
    }

    /// <summary>Which hold point.</summary>
    public HoldPointKind Kind { get; }

    /// <summary>Who looked.</summary>
    public string By { get; }

    /// <summary>When.</summary>
    public DateTimeOffset At { get; }

    /// <summary>The number where there is one: bare metal, the least lap, creases or bubbles left.</summary>
    public Measure? Measured { get; }

    /// <summary>The least end lap; null where the lay has none, or it is no reading of laps.</summary>
    public Measure? EndLap { get; }

    /// <summary>The answer at points that ask yes or no: welds, rolled down, last edges. True at all others.</summary>
    public bool IsGood { get; }

    /// <summary>The surface, for a reading of cleaning.</summary>
    public SurfaceReading? Surface { get; }

    /// <summary>The trial patch, for a reading of one.</summary>
    public TrialPatch? Patch { get; }

    /// <summary>The thickness readings as they were judged, for a reading of them.</summary>
    public AcceptanceByReadings? Thickness { get; }

    /// <summary>A trial patch.</summary>
    /// <param name="patch">What was measured.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    public static HoldPointReading OfTrialPatch(TrialPatch patch, string by, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(patch);
        return new(HoldPointKind.TrialPatch, by, at, patch: patch);
    }

    /// <summary>The surface before laying.</summary>
    /// <param name="surface">What was measured.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    public static HoldPointReading OfCleaning(SurfaceReading surface, string by, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(surface);
        return new(HoldPointKind.Cleaning, by, at, surface: surface);
    }

    /// <summary>Bare metal on the worst square metre.</summary>
    /// <param name="ratio">Bare steel per area covered.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    public static HoldPointReading OfContact(BareRatio ratio, string by, DateTimeOffset at) =>
        new(HoldPointKind.Contact, by, at, new Measure(ratio.SquareCentimetersPerSquareMeter, TradeUnit.SquareCentimeterPerSquareMeter));

    /// <summary>Strips along the welds.</summary>
    /// <param name="allCovered">Whether a strip lies along every weld.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    public static HoldPointReading OfWelds(bool allCovered, string by, DateTimeOffset at) => new(HoldPointKind.Welds, by, at, good: allCovered);

    /// <summary>Laps.</summary>
    /// <param name="least">Least true lap found; 0 where a gap shows.</param>
    /// <param name="leastEnd">Least end lap found; left out where the lay has none.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    /// <exception cref="ArgumentOutOfRangeException">A lap is below 0 or above 1 m.</exception>
    public static HoldPointReading OfLaps(Length least, Length? leastEnd, string by, DateTimeOffset at) => new(
        HoldPointKind.Laps, by, at, Lap(least, nameof(least)), leastEnd is { } end ? Lap(end, nameof(leastEnd)) : null);

    /// <summary>Rolled down.</summary>
    /// <param name="everything">Whether no edge stands up and nothing sounds hollow.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    public static HoldPointReading OfRollDown(bool everything, string by, DateTimeOffset at) => new(HoldPointKind.RollDown, by, at, good: everything);

    /// <summary>Creases.</summary>
    /// <param name="left">How many are left open.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is negative.</exception>
    public static HoldPointReading OfCreases(int left, string by, DateTimeOffset at) => new(HoldPointKind.Creases, by, at, Count(left));

    /// <summary>Bubbles.</summary>
    /// <param name="left">How many are left.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is negative.</exception>
    public static HoldPointReading OfBubbles(int left, string by, DateTimeOffset at) => new(HoldPointKind.Bubbles, by, at, Count(left));

    /// <summary>Where the last edges face.</summary>
    /// <param name="down">Whether every one faces down.</param>
    /// <param name="by">Who looked.</param>
    /// <param name="at">When.</param>
    public static HoldPointReading OfEnds(bool down, string by, DateTimeOffset at) => new(HoldPointKind.EndDirection, by, at, good: down);

    /// <summary>Thickness readings.</summary>
    /// <param name="thickness">The readings, as they were judged.</param>
    /// <param name="by">Who measured.</param>
    /// <param name="at">When.</param>
    public static HoldPointReading OfThickness(AcceptanceByReadings thickness, string by, DateTimeOffset at)
    {
        ArgumentNullException.ThrowIfNull(thickness);
        return new(HoldPointKind.Thickness, by, at, thickness: thickness);
    }

    /// <summary>Holds the reading against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentException.ThrowIfNullOrWhiteSpace(subject);
        return this.Kind switch
        {
            HoldPointKind.TrialPatch => this.Patch!.Judge(rules, subject),
            HoldPointKind.Cleaning => new SurfaceReadiness(this.Surface!, rules, subject).Findings,
            HoldPointKind.Contact => One(rules[RuleIds.MinimumBareRatio].Judge(this.Measured!.Value, subject)),
            HoldPointKind.Welds => this.Unless(rules[RuleIds.WeldsNotCovered], subject),
            HoldPointKind.Laps => One(rules[RuleIds.MinimumLap].Judge(this.Measured!.Value, subject))
                .Concat(One(this.EndLap is { } end ? rules[RuleIds.MinimumEndLap].Judge(end, subject) : null)),
            HoldPointKind.RollDown => this.Unless(rules[RuleIds.NotRolledDown], subject),
            HoldPointKind.Creases => this.UnlessNone(rules[RuleIds.OpenCreases], subject),
            HoldPointKind.Bubbles => this.UnlessNone(rules[RuleIds.BubblesLeft], subject),
            HoldPointKind.EndDirection => this.Unless(rules[RuleIds.EndFacesUp], subject),
            _ => this.Thickness!.Findings,
        };
    }

    /// <summary>What was found, by whom and when, as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{HoldPointTexts.NameOf(this.Kind)}: {this.Found()} ({this.By}, {this.At:yyyy-MM-dd HH:mm zzz})");

    private string Found() => (this.Kind, this.IsGood) switch
    {
        (HoldPointKind.TrialPatch, _) => this.Patch!.ToString(),
        (HoldPointKind.Cleaning, _) => this.Surface!.ToString(),
        (HoldPointKind.Thickness, _) => this.Thickness!.ToString(),
        (HoldPointKind.Laps, _) when this.EndLap is { } end => $"{this.Measured}, end lap {end}",
        (_, true) => this.Measured?.ToString() ?? "good",
        _ => "not good",
    };

    private IEnumerable<Finding> Unless(Rule rule, string subject) => this.IsGood ? [] : [rule.State(subject)];

    private IEnumerable<Finding> UnlessNone(Rule rule, string subject) =>
        this.Measured!.Value.Number > 0 ? [rule.State(subject, this.Measured)] : [];

    private static IEnumerable<Finding> One(Finding? finding) => finding is null ? [] : [finding];

    private static Measure Lap(Length lap, string parameter) => new(
        AcceptedRange.Between(0, 1000, "mm").Check(UnitConversions.Millimeters(lap), parameter), TradeUnit.Millimeter);

    private static Measure Count(int left)
    {
        AcceptedRange.Between(0, int.MaxValue, string.Empty).Check(left);
        return new(left, TradeUnit.One);
    }
}
