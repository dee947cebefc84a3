using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>Where tape ends and steel stays bare beside it: a holiday like any other, whose demand the zinc at the end has to carry.</summary>
/// <remarks>Bare margin: zero (painted, or covered by the next tape) to 100 m. Zinc width: 0.001 mm to 100 m.</remarks>
public sealed record TapeEnd
{
    private readonly StoredNumber bareMm;
    private readonly StoredNumber zincMm;

    /// <summary>Describes a tape end.</summary>
    /// <param name="bareMargin">Width of bare steel beside it that this end alone feeds.</param>
    /// <param name="zincWidth">Width of zinc that feeds it.</param>
    /// <exception cref="ArgumentOutOfRangeException">A width is outside its range.</exception>
    public TapeEnd(Length bareMargin, Length zincWidth)
    {
        this.bareMm = new StoredNumber(AcceptedRange.Between(0, 100_000, "mm").Check(UnitConversions.Millimeters(bareMargin), nameof(bareMargin)));
        this.zincMm = new StoredNumber(FilmSegment.AcceptedWidth.Check(UnitConversions.Millimeters(zincWidth), nameof(zincWidth)));
    }

    /// <summary>Width of bare steel beside it.</summary>
    public Length BareMargin => Length.FromMillimeters(this.bareMm.Bare);

    /// <summary>Width of zinc that feeds it.</summary>
    public Length ZincWidth => Length.FromMillimeters(this.zincMm.Bare);

    /// <summary>What the zinc at this end feeds, evenly; null where no steel is bare.</summary>
    public ZincFeed? Feed => this.bareMm.Bare >= 0.001 ? ZincFeed.BesideMargin(this.BareMargin, this.ZincWidth) : null;

    /// <summary>Holds the bare margin against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules[RuleIds.BareMarginBesideTape].Judge(new Measure(this.bareMm.Bare, TradeUnit.Millimeter), subject) is { } bare)
        {
            yield return bare;
        }
    }

    /// <summary>Both widths in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.bareMm.Bare:0.###} mm bare beside {this.zincMm.Bare:0.###} mm of zinc");
}
