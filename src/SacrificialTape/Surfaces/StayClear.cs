using System.Globalization;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using UnitsNet;

namespace SacrificialTape.Surfaces;

/// <summary>
/// What must stay clear of tape, with a margin: like spots on any surface, or like bands all round a straight pipe.
/// </summary>
/// <remarks>
/// <para>Sizes: more than 0, at most 100 m, measured along the surface. Margin, on every side: 0 to 10 m. Count: 1 to
/// 1 000 000. A rectangular spot grows to a rectangle, a round one to a circle.</para>
/// <para>Spots are cut out of the strips that cross them. Bands part a pipe into spans: see
/// <see cref="InterruptedPipe"/>.</para>
/// </remarks>
public sealed record StayClear : IHasWorkings
{
    private static readonly AcceptedRange AcceptedSize = AcceptedRange.AboveUpTo(0, 100_000, "mm");

    private readonly StoredNumber widthMm;
    private readonly StoredNumber heightMm;
    private readonly StoredNumber marginMm;
    private readonly StoredNumber middleMm;
    private readonly StoredNumber extent;

    private StayClear(StayClearKind kind, int count, Form form, double widthMm, double heightMm, double marginMm, StoredNumber middle = default)
    {
        AcceptedRange.Between(1, 1_000_000, "").Check(count);
        this.Kind = Enum.IsDefined(kind)
            ? kind
            : throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind known here.");
        this.Count = count;
        this.Shape = form;
        this.widthMm = new StoredNumber(widthMm);
        this.heightMm = new StoredNumber(heightMm);
        this.marginMm = new StoredNumber(marginMm);
        this.middleMm = middle;
        this.extent = new StoredNumber(this.ExtentOf(default(NoSteps)));
    }

    private enum Form
    {
        Rectangle,
        Circle,
        Band,
    }

    /// <summary>What it is.</summary>
    public StayClearKind Kind { get; }

    /// <summary>How many like ones.</summary>
    public int Count { get; }

    /// <summary>Whether it goes all round a pipe.</summary>
    public bool IsBand => this.Shape == Form.Band;

    /// <summary>Whether it is a circle.</summary>
    public bool IsRound => this.Shape == Form.Circle;

    /// <summary>Width; the diameter of a circle, the length of a band along the pipe.</summary>
    public Length Width => Length.FromMillimeters(this.widthMm.Bare);

    /// <summary>Height; the diameter of a circle; null for a band, which is as high as the pipe is round.</summary>
    public Length? Height => this.IsBand ? null : Length.FromMillimeters(this.heightMm.Bare);

    /// <summary>Margin on every side, clear as well.</summary>
    public Length Margin => Length.FromMillimeters(this.marginMm.Bare);

    /// <summary>Where the middle of a band is, from the start of the pipe; null where that is not stated.</summary>
    public Length? Middle => this.middleMm.IsSet ? Length.FromMillimeters(this.middleMm.Bare) : null;

    /// <summary>Area of all these spots with their margins; null for bands, whose area the pipe decides.</summary>
    public Area? SpotArea => this.IsBand ? null : Area.FromSquareMeters(this.extent.Bare);

    /// <summary>Length of all these bands with their margins; null for spots.</summary>
    public Length? BandLength => this.IsBand ? Length.FromMillimeters(this.extent.Bare) : null;

    internal double SpotM2 => this.IsBand ? 0 : this.extent.Bare;

    internal double BandMm => this.IsBand ? this.extent.Bare : 0;

    internal bool IsPlaced => this.middleMm.IsSet;

    internal double MiddleMm => this.middleMm.Bare;

    private Form Shape { get; }

    /// <summary>Rectangular spots.</summary>
    /// <param name="kind">What they are.</param>
    /// <param name="width">Along the surface.</param>
    /// <param name="height">Along the surface, square to the width.</param>
    /// <param name="count">How many.</param>
    /// <param name="margin">Clear as well, on every side; left out: that of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static StayClear Spot(StayClearKind kind, Length width, Length height, int count = 1, Length? margin = null) => new(
        kind, count, Form.Rectangle, Size(width, nameof(width)), Size(height, nameof(height)), MarginMm(margin, kind));

    /// <summary>Round spots.</summary>
    /// <param name="kind">What they are.</param>
    /// <param name="diameter">Along the surface.</param>
    /// <param name="count">How many.</param>
    /// <param name="margin">Clear as well, on every side; left out: that of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static StayClear RoundSpot(StayClearKind kind, Length diameter, int count = 1, Length? margin = null)
    {
        double mm = Size(diameter, nameof(diameter));
        return new(kind, count, Form.Circle, mm, mm, MarginMm(margin, kind));
    }

    /// <summary>Bands all round a straight pipe.</summary>
    /// <param name="kind">What they are.</param>
    /// <param name="length">Of one band, along the pipe.</param>
    /// <param name="count">How many.</param>
    /// <param name="margin">Clear as well, on both sides; left out: that of the default rule set.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static StayClear Band(StayClearKind kind, Length length, int count = 1, Length? margin = null)
    {
        double mm = Size(length, nameof(length));
        return new(kind, count, Form.Band, mm, mm, MarginMm(margin, kind));
    }

    /// <summary>The margin that a rule set wants beside a kind: the default, and the least without a finding.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="rules">The rule set.</param>
    public static Length LeastMargin(StayClearKind kind, RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return Length.FromMillimeters(rules.Number(RuleOf(kind), TradeUnit.Millimeter));
    }

    /// <summary>The same single band at a place along the pipe.</summary>
    /// <param name="middle">From the start of the pipe to the middle of the band, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is negative.</exception>
    /// <exception cref="InvalidOperationException">It is a spot, or more than one band.</exception>
    public StayClear At(Length middle)
    {
        if (!this.IsBand || this.Count > 1)
        {
            throw new InvalidOperationException(this.IsBand
                ? $"{this.Count} like bands cannot be at one place: list them one by one."
                : "Only a band has a place along a pipe.");
        }

        double mm = AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(middle), nameof(middle));
        return new(this.Kind, 1, Form.Band, this.widthMm.Bare, this.heightMm.Bare, this.marginMm.Bare, new StoredNumber(mm));
    }

    /// <summary>Holds kind and margin against the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    public IEnumerable<Finding> Judge(RuleSet rules, string subject)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (rules[RuleOf(this.Kind)].Judge(Measure.Of(this.Margin), subject) is { } margin)
        {
            yield return margin;
        }

        if (this.Kind == StayClearKind.IsolatingJoint && !this.IsBand)
        {
            yield return rules[RuleIds.IsolatingJointBridged].State(subject);
        }
    }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        _ = this.ExtentOf(steps);
        return steps.Under("Left clear: " + this);
    }

    /// <summary>Count, kind, size and margin in a few words.</summary>
    public override string ToString()
    {
        string size = this.Shape switch
        {
            Form.Band => string.Create(CultureInfo.InvariantCulture, $"band {this.widthMm.Bare:0.##} mm long all round"),
            Form.Circle => string.Create(CultureInfo.InvariantCulture, $"round {this.widthMm.Bare:0.##} mm"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{this.widthMm.Bare:0.##} x {this.heightMm.Bare:0.##} mm"),
        };
        string place = this.IsPlaced ? string.Create(CultureInfo.InvariantCulture, $", middle at {this.MiddleMm / 1000:0.###} m") : string.Empty;
        return string.Create(CultureInfo.InvariantCulture, $"{this.Count} {Word(this.Kind)}(s), {size}, margin {this.marginMm.Bare:0.##} mm{place}");
    }

    internal static string Word(StayClearKind kind) => kind switch
    {
        StayClearKind.IsolatingJoint => "isolating joint",
        StayClearKind.EarthBond => "earth bond",
        StayClearKind.WeepHole => "weep hole",
        StayClearKind.InspectionPoint => "inspection point",
        StayClearKind.NamePlate => "name plate",
        StayClearKind.FlangedJoint => "flanged joint",
        _ => "moving part",
    };

    /// <summary>Length of one band with both margins.</summary>
    internal double OneBandMm => this.BandMm / this.Count;

    private static string RuleOf(StayClearKind kind) => kind switch
    {
        StayClearKind.IsolatingJoint => RuleIds.IsolatingJointMargin,
        StayClearKind.EarthBond => RuleIds.EarthBondMargin,
        StayClearKind.WeepHole => RuleIds.WeepHoleMargin,
        StayClearKind.InspectionPoint => RuleIds.InspectionPointMargin,
        StayClearKind.NamePlate => RuleIds.NamePlateMargin,
        StayClearKind.FlangedJoint => RuleIds.FlangedJointMargin,
        StayClearKind.MovingPart => RuleIds.MovingPartMargin,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind known here."),
    };

    private static double Size(Length length, string parameter) => AcceptedSize.Check(UnitConversions.Millimeters(length), parameter);

    private static double MarginMm(Length? margin, StayClearKind kind) => AcceptedRange.Between(0, 10_000, "mm")
        .Check(UnitConversions.Millimeters(margin ?? LeastMargin(kind, RuleSet.Default)), nameof(margin));

    /// <summary>Area of the spots in m2, or length of the bands in mm.</summary>
    internal double ExtentOf<TSteps>(TSteps steps)
        where TSteps : struct, IStepRecorder => this.Shape switch
        {
            Form.Band => StayClearKernel.BandsMm(this.Count, this.widthMm.Bare, this.marginMm.Bare, steps),
            Form.Circle => StayClearKernel.RoundSpotsM2(this.Count, this.widthMm.Bare, this.marginMm.Bare, steps),
            _ => StayClearKernel.RectangularSpotsM2(this.Count, this.widthMm.Bare, this.heightMm.Bare, this.marginMm.Bare, steps),
        };
}
