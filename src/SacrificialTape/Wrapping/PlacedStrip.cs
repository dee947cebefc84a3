using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>Where one strip lies on the unrolled surface: a rectangle, or one that leans along the surface.</summary>
/// <remarks>
/// <para>Along runs from the start of the surface, on a bend along its outside, on a panel from the left; around runs from
/// the line that the crew names, on a panel from the bottom. A place may reach past an end, where it is trimmed, and round
/// the girth more than once. Extents: more than 0, at most 1000 km.</para>
/// <para>On a bend the extent along is that on the outside; further in, a strip of the same width takes up more of it.</para>
/// </remarks>
public sealed record PlacedStrip
{
    private static readonly AcceptedRange AcceptedExtent = AcceptedRange.AboveUpTo(0, 1e9, "mm");
    private static readonly AcceptedRange AcceptedPlace = AcceptedRange.Between(-1e9, 1e9, "mm");

    private readonly StoredNumber fromAlongMm;
    private readonly StoredNumber alongMm;
    private readonly StoredNumber fromAroundMm;
    private readonly StoredNumber aroundMm;
    private readonly StoredNumber leanMm;

    /// <summary>Places a strip.</summary>
    /// <param name="number">Its number in the lay, from 1.</param>
    /// <param name="fromAlong">Where it begins along the surface.</param>
    /// <param name="along">How far it reaches along the surface at any one place around.</param>
    /// <param name="fromAround">Where it begins around the surface.</param>
    /// <param name="around">How far it reaches around the surface; more than the girth where it laps on itself.</param>
    /// <param name="runsAround">Whether its length runs around, and its width along.</param>
    /// <param name="lean">How far it moves along the surface from its beginning around to its end; left out: zero.</param>
    /// <param name="pass">Which pass it belongs to, from 1: only the first lies on the surface.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public PlacedStrip(
        int number, Length fromAlong, Length along, Length fromAround, Length around, bool runsAround, Length? lean = null, int pass = 1)
        : this(
            number,
            UnitConversions.Millimeters(fromAlong),
            UnitConversions.Millimeters(along),
            UnitConversions.Millimeters(fromAround),
            UnitConversions.Millimeters(around),
            runsAround,
            UnitConversions.Millimeters(lean ?? Length.Zero),
            pass)
    {
    }

    internal PlacedStrip(
        int number, double fromAlong, double along, double fromAround, double around, bool runsAround, double lean = 0, int pass = 1)
    {
        AcceptedRange.Between(1, int.MaxValue, string.Empty).Check(number);
        AcceptedRange.Between(1, int.MaxValue, string.Empty).Check(pass);
        this.Number = number;
        this.Pass = pass;
        this.RunsAround = runsAround;
        this.fromAlongMm = new StoredNumber(AcceptedPlace.Check(fromAlong));
        this.alongMm = new StoredNumber(AcceptedExtent.Check(along));
        this.fromAroundMm = new StoredNumber(AcceptedPlace.Check(fromAround));
        this.aroundMm = new StoredNumber(AcceptedExtent.Check(around));
        this.leanMm = new StoredNumber(AcceptedPlace.Check(lean));
    }

    /// <summary>Its number in the lay, from 1.</summary>
    public int Number { get; }

    /// <summary>Which pass it belongs to, from 1.</summary>
    public int Pass { get; }

    /// <summary>Whether its length runs around, and its width along.</summary>
    public bool RunsAround { get; }

    /// <summary>Where it begins along the surface.</summary>
    public Length FromAlong => Length.FromMillimeters(this.FromAlongMm);

    /// <summary>How far it reaches along the surface at any one place around.</summary>
    public Length ExtentAlong => Length.FromMillimeters(this.AlongMm);

    /// <summary>Where it begins around the surface.</summary>
    public Length FromAround => Length.FromMillimeters(this.FromAroundMm);

    /// <summary>How far it reaches around the surface.</summary>
    public Length ExtentAround => Length.FromMillimeters(this.AroundMm);

    /// <summary>How far it moves along the surface from its beginning around to its end.</summary>
    public Length Lean => Length.FromMillimeters(this.LeanMm);

    internal double FromAlongMm => this.fromAlongMm.Bare;

    internal double AlongMm => this.alongMm.Bare;

    internal double FromAroundMm => this.fromAroundMm.Bare;

    internal double AroundMm => this.aroundMm.Bare;

    internal double LeanMm => this.leanMm.Bare;

    /// <summary>Number and place in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"strip {this.Number}{(this.Pass == 1 ? string.Empty : $" of pass {this.Pass}")}, {this.AlongMm:0.#} mm along from {this.FromAlongMm:0.#} mm, {this.AroundMm:0.#} mm around from {this.FromAroundMm:0.#} mm{(this.LeanMm == 0 ? string.Empty : $", leaning {this.LeanMm:0.#} mm")}");
}
