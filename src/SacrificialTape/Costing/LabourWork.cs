using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Costing;

/// <summary>How much there is to do of one kind of work.</summary>
/// <remarks>Area and strip: zero or more. Pieces: zero or more.</remarks>
public sealed record LabourWork
{
    private readonly StoredNumber squareMeters;
    private readonly StoredNumber stripMeters;

    /// <summary>Describes work.</summary>
    /// <param name="kind">The kind of work.</param>
    /// <param name="area">Area of steel covered.</param>
    /// <param name="stripLength">Length of strip laid.</param>
    /// <param name="pieces">Pieces laid.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative.</exception>
    public LabourWork(LabourKind kind, Area area, Length stripLength, long pieces)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentOutOfRangeException.ThrowIfNegative(pieces);
        this.Kind = kind;
        this.squareMeters = new StoredNumber(
            AcceptedRange.AtLeast(0, "m2").Check(UnitConversions.SquareMeters(area), nameof(area)));
        this.stripMeters = new StoredNumber(
            AcceptedRange.AtLeast(0, "m").Check(UnitConversions.Meters(stripLength), nameof(stripLength)));
        this.Pieces = pieces;
    }

    /// <summary>The kind of work.</summary>
    public LabourKind Kind { get; }

    /// <summary>Area of steel covered.</summary>
    public Area Area => Area.FromSquareMeters(this.squareMeters.Bare);

    /// <summary>Length of strip laid.</summary>
    public Length StripLength => Length.FromMeters(this.stripMeters.Bare);

    /// <summary>Pieces laid.</summary>
    public long Pieces { get; }

    /// <summary>The work of a lay: the area of its surface once, all its strip, all its pieces.</summary>
    /// <param name="lay">The lay.</param>
    /// <param name="kind">What kind of work it is.</param>
    public static LabourWork Of(ILay lay, LabourKind kind)
    {
        ArgumentNullException.ThrowIfNull(lay);
        return new(
            kind,
            lay.Surface.Area,
            Length.FromMeters(lay.Strips.Sum(static strip => UnitConversions.Millimeters(strip.TotalLength)) / 1000),
            lay.Strips.Sum(static strip => (long)strip.Count));
    }

    /// <summary>The work in a few words.</summary>
    public override string ToString() => $"{this.Kind}: {MeasureText.Write(this.squareMeters.Bare, TradeUnit.SquareMeter, 6)}, {MeasureText.Write(this.stripMeters.Bare, TradeUnit.Meter, 6)} of strip, {this.Pieces} piece(s)";

    internal double StripMeters => this.stripMeters.Bare;

    internal double By(LabourMeasure measure) => measure switch
    {
        LabourMeasure.Area => this.squareMeters.Bare,
        LabourMeasure.StripLength => this.stripMeters.Bare,
        _ => this.Pieces,
    };
}
