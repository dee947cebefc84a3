using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>One damaged spot: what is cut out, on what steel, and where, if that is known.</summary>
/// <remarks>
/// The place of its middle is measured on the unrolled surface, from any one mark for the whole list: along the line, and
/// across it (round the pipe). -100 to 100 km. The length of the cut-out points along the line unless turned.
/// </remarks>
public sealed record Damage
{
    private static readonly AcceptedRange Accepted = AcceptedRange.Between(-1e8, 1e8, "mm");

    private readonly StoredNumber alongMm;
    private readonly StoredNumber acrossMm;
    private readonly StoredNumber turnDegrees;

    /// <summary>Damage whose place is not stated: it takes a patch, and is not held against its neighbours.</summary>
    /// <param name="name">How reports name it.</param>
    /// <param name="cutOut">What is cut out.</param>
    /// <param name="place">On what steel.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public Damage(string name, CutOut cutOut, PatchPlace place)
        : this(name, cutOut, place, default, default, new StoredNumber(0))
    {
    }

    private Damage(string name, CutOut cutOut, PatchPlace place, StoredNumber along, StoredNumber across, StoredNumber turn)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(cutOut);
        ArgumentNullException.ThrowIfNull(place);
        this.Name = name;
        this.CutOut = cutOut;
        this.Place = place;
        this.alongMm = along;
        this.acrossMm = across;
        this.turnDegrees = turn;
    }

    /// <summary>How reports name it.</summary>
    public string Name { get; }

    /// <summary>What is cut out.</summary>
    public CutOut CutOut { get; }

    /// <summary>On what steel.</summary>
    public PatchPlace Place { get; }

    /// <summary>Whether its place is stated.</summary>
    public bool HasPosition => this.alongMm.IsSet;

    /// <summary>Its middle along the line; null when not stated.</summary>
    public Length? Along => this.HasPosition ? Length.FromMillimeters(this.AlongMm) : null;

    /// <summary>Its middle across the line; null when not stated.</summary>
    public Length? Across => this.HasPosition ? Length.FromMillimeters(this.AcrossMm) : null;

    /// <summary>How its length is turned away from the line.</summary>
    public Angle Turn => Angle.FromDegrees(this.turnDegrees.Bare);

    internal double AlongMm => this.alongMm.Bare;

    internal double AcrossMm => this.acrossMm.Bare;

    internal double TurnRadians => this.turnDegrees.Bare * Math.PI / 180;

    /// <summary>The same damage at a place.</summary>
    /// <param name="along">Its middle along the line.</param>
    /// <param name="across">Its middle across the line.</param>
    /// <param name="turn">How its length is turned away from the line, -180 to 180 degrees; left out: not at all.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Damage At(Length along, Length across, Angle? turn = null) => new(
        this.Name,
        this.CutOut,
        this.Place,
        new StoredNumber(Accepted.Check(UnitConversions.Millimeters(along), nameof(along))),
        new StoredNumber(Accepted.Check(UnitConversions.Millimeters(across), nameof(across))),
        new StoredNumber(AcceptedRange.Between(-180, 180, "deg").Check(UnitConversions.Degrees(turn ?? Angle.Zero), nameof(turn))));

    /// <summary>Name, cut-out and place in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Name}: {this.CutOut}, {this.Place}{(this.HasPosition ? string.Create(CultureInfo.InvariantCulture, $", at {this.AlongMm:0.#} / {this.AcrossMm:0.#} mm") : string.Empty)}");

    /// <summary>One rectangular cut-out along the line that takes in both.</summary>
    internal Damage Joined(Damage other)
    {
        double west = Math.Min(this.AlongMm - this.ReachAlong, other.AlongMm - other.ReachAlong);
        double east = Math.Max(this.AlongMm + this.ReachAlong, other.AlongMm + other.ReachAlong);
        double south = Math.Min(this.AcrossMm - this.ReachAcross, other.AcrossMm - other.ReachAcross);
        double north = Math.Max(this.AcrossMm + this.ReachAcross, other.AcrossMm + other.ReachAcross);
        return new Damage(
            this.Name + " + " + other.Name,
            CutOut.Rectangle(Length.FromMillimeters(east - west), Length.FromMillimeters(north - south)),
            this.Place).At(Length.FromMillimeters((west + east) / 2), Length.FromMillimeters((south + north) / 2));
    }

    private double ReachAlong => this.CutOut.Half.Reach(Math.Cos(this.TurnRadians), Math.Sin(this.TurnRadians));

    private double ReachAcross => this.CutOut.Half.Reach(Math.Sin(this.TurnRadians), Math.Cos(this.TurnRadians));
}
