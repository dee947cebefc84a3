using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Contact of a lay over paint, tight scale or tight rust, proved by the places of windows and strips.</summary>
/// <remarks>
/// Three checks: bare steel in any one square metre, every strip joined to bare steel, and the distance from any point to
/// the nearest window. What is lost on the way of the current is another: see <see cref="VoltageBudget"/> and
/// <see cref="ContactNetwork"/>. A lay that does not know the places of its strips gets a finding, and no guess.
/// </remarks>
public sealed record LayContact : IHasWorkings
{
    /// <summary>Describes the contact of a lay.</summary>
    /// <param name="lay">The lay.</param>
    /// <param name="layout">The windows, on the surface of the lay.</param>
    /// <param name="under">What lies between tape and steel.</param>
    /// <exception cref="ArgumentException">The layout is of another surface.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a kind of what lies under the tape.</exception>
    public LayContact(ILay lay, WindowLayout layout, UnderTape under = UnderTape.SoundPaint)
    {
        ArgumentNullException.ThrowIfNull(lay);
        ArgumentNullException.ThrowIfNull(layout);
        if (!layout.Surface.Surface.Equals(lay.Surface))
        {
            throw new ArgumentException(
                $"The windows lie on {layout.Surface.Surface.Description}, the tape on {lay.Surface.Description}: both must be the same surface.", nameof(layout));
        }

        this.Lay = lay;
        this.Layout = layout;
        this.Under = Enum.IsDefined(under) ? under : throw new ArgumentOutOfRangeException(nameof(under), under, "Not known here.");
    }

    /// <summary>The lay.</summary>
    public ILay Lay { get; }

    /// <summary>The windows.</summary>
    public WindowLayout Layout { get; }

    /// <summary>What lies between tape and steel.</summary>
    public UnderTape Under { get; }

    /// <summary>Looks for the square metre with the least bare steel.</summary>
    public LeastBareMetre FindWorstMetre() => new(this.Layout);

    /// <summary>Looks for the point farthest from every window; null where there is no window.</summary>
    public FarthestPoint? FindFarthest() => this.Layout.Windows.Count == 0 ? null : new FarthestPoint(this.Layout);

    /// <summary>Which strips touch bare steel; null where the lay does not know the places of its strips.</summary>
    /// <param name="leastContact">The least area that counts as touching.</param>
    /// <exception cref="ArgumentOutOfRangeException">The area is not above 0 or over 1 m2.</exception>
    public JoinedStrips? Strips(Area leastContact) => this.Lay is IPlacedStrips placed
        ? new JoinedStrips(placed.PlaceStrips(), this.Layout, this.Lay.Stock.Tape.ConductsAtLaps, leastContact)
        : null;

    /// <summary>Holds the contact against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        LeastBareMetre worst = this.FindWorstMetre();
        var ratio = new Measure(worst.Ratio.SquareCentimetersPerSquareMeter, TradeUnit.SquareCentimeterPerSquareMeter);
        string where = string.Create(
            CultureInfo.InvariantCulture,
            $"{subject} ({worst.ExtentAlong.Millimeters:0} x {worst.ExtentAround.Millimeters:0} mm from {worst.FromAlong.Millimeters:0} mm along, {worst.FromAround.Millimeters:0} mm around)");
        if (rules[RuleIds.BareRatioInMetre].Judge(ratio, where) is { } tooLittle)
        {
            yield return tooLittle;
        }

        foreach (Finding finding in this.StripFindings(rules, subject))
        {
            yield return finding;
        }

        if (this.FindFarthest() is not { } farthest)
        {
            yield return rules[RuleIds.NoWindow].State(subject);
        }
        else if (rules[RuleIds.MaximumWindowDistance].Judge(Measure.Of(farthest.AtMost), string.Create(
            CultureInfo.InvariantCulture,
            $"{subject} ({farthest.Along.Millimeters:0} mm along, {farthest.Around.Millimeters:0} mm around)")) is { } far)
        {
            yield return far;
        }

        if (this.Under == UnderTape.SoundPaint)
        {
            yield return rules[RuleIds.OldPaint].State(subject);
            yield return rules[RuleIds.PaintAtWindows].State(subject);
        }
        else
        {
            yield return rules[RuleIds.ScaleAsPaint].State(subject);
        }

        yield return rules[RuleIds.WindowEdges].State(subject);
    }

    /// <inheritdoc/>
    public Workings ShowWorkings() => this.FindWorstMetre().ShowWorkings();

    /// <summary>Lay and windows in a few words.</summary>
    public override string ToString() => $"{this.Lay.Description}, {this.Layout}";

    private IEnumerable<Finding> StripFindings(RuleSet rules, string subject)
    {
        Rule least = rules[RuleIds.LeastContactArea];
        if (this.Strips(least.Limit!.Value.ToArea()) is not { } strips)
        {
            yield return rules[RuleIds.StripPlacesUnknown].State(subject);
            yield break;
        }

        if (strips.Untouched.Count > 0)
        {
            yield return rules[RuleIds.StripsWithoutSteel].State(
                $"{subject} ({string.Join("; ", strips.Untouched.Take(3))}{(strips.Untouched.Count > 3 ? "; and others" : string.Empty)})",
                new Measure(strips.Untouched.Count, TradeUnit.One),
                new Measure(0, TradeUnit.One));
        }

        if (!strips.LapsConduct && this.Lay.Strips.Any(strip => strip.LengthUm > this.Lay.Stock.RollUm))
        {
            yield return rules[RuleIds.SpliceOverFilm].State(subject);
        }
    }
}
