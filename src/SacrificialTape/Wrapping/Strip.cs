using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Wrapping;

/// <summary>
/// A number of like strips to cut: the one currency between a lay and the take-off. Every micrometre of each piece is
/// cover, lap or trim.
/// </summary>
/// <remarks>
/// Length: more than 0, at most 1000 km, counted in whole micrometres. Cover and trim: zero or more, together at most
/// the length; the rest is lap. Count: at least 1.
/// </remarks>
public sealed record Strip
{
    private readonly long lengthUm;
    private readonly long coverUm;
    private readonly long trimUm;

    /// <summary>Describes strips.</summary>
    /// <param name="stock">The stocked strip they are cut from.</param>
    /// <param name="length">Length of one piece.</param>
    /// <param name="count">How many pieces.</param>
    /// <param name="purpose">What they are for.</param>
    /// <param name="maySplice">Whether a piece may be put together from two rolls.</param>
    /// <param name="cover">The part of the length that covers the surface once.</param>
    /// <param name="trim">The part that is cut off again.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public Strip(StripStock stock, Length length, int count, StripPurpose purpose, bool maySplice, Length cover, Length trim)
        : this(
            stock ?? throw new ArgumentNullException(nameof(stock)),
            Accepted(length, nameof(length)),
            count,
            purpose,
            maySplice,
            Part(cover, nameof(cover)),
            Part(trim, nameof(trim)))
    {
        if (this.coverUm + this.trimUm > this.lengthUm)
        {
            throw new ArgumentOutOfRangeException(nameof(cover), string.Create(
                CultureInfo.InvariantCulture,
                $"Cover {this.coverUm / 1e3} mm and trim {this.trimUm / 1e3} mm together exceed the length {this.lengthUm / 1e3} mm."));
        }
    }

    private Strip(StripStock stock, double lengthMm, int count, StripPurpose purpose, bool maySplice, double coverMm, double trimMm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        this.Stock = stock;
        this.lengthUm = Math.Max(1, ToMicrometers(lengthMm));
        this.Count = count;
        this.Purpose = purpose;
        this.MaySplice = maySplice;
        this.trimUm = ToMicrometers(trimMm);
        this.coverUm = ToMicrometers(coverMm);
    }

    /// <summary>The stocked strip they are cut from.</summary>
    public StripStock Stock { get; }

    /// <summary>How many pieces.</summary>
    public int Count { get; }

    /// <summary>What they are for.</summary>
    public StripPurpose Purpose { get; }

    /// <summary>Whether a piece may be put together from two rolls.</summary>
    public bool MaySplice { get; }

    /// <summary>Length of one piece.</summary>
    public Length Length => Length.FromMicrometers(this.lengthUm);

    /// <summary>The part of one piece that covers the surface once.</summary>
    public Length Cover => Length.FromMicrometers(this.coverUm);

    /// <summary>The part of one piece that lies over other strips.</summary>
    public Length Lap => Length.FromMicrometers(this.LapUm);

    /// <summary>The part of one piece that is cut off.</summary>
    public Length Trim => Length.FromMicrometers(this.trimUm);

    /// <summary>Length of all pieces.</summary>
    public Length TotalLength => Length.FromMicrometers((double)this.lengthUm * this.Count);

    internal long LengthUm => this.lengthUm;

    internal long CoverUm => this.coverUm;

    internal long TrimUm => this.trimUm;

    internal long LapUm => this.lengthUm - this.coverUm - this.trimUm;

    /// <summary>Count, length and purpose in a few words.</summary>
    public override string ToString() => $"{this.Count} x {MeasureText.Write(this.lengthUm / 1e6, TradeUnit.Meter, 6)} of {this.Stock}, {this.Purpose}";

    /// <summary>Whether they are cut alike, whatever their count.</summary>
    internal bool IsLike(Strip other) => this.lengthUm == other.lengthUm
        && this.coverUm == other.coverUm
        && this.trimUm == other.trimUm
        && this.Purpose == other.Purpose
        && this.MaySplice == other.MaySplice
        && this.Stock.Equals(other.Stock);

    /// <summary>Another number of the same pieces.</summary>
    internal Strip Times(long count) => new(
        this.Stock,
        this.lengthUm / 1e3,
        (int)AcceptedRange.Between(1, int.MaxValue, "like strips").Check(count),
        this.Purpose,
        this.MaySplice,
        this.coverUm / 1e3,
        this.trimUm / 1e3);

    /// <summary>The same strips with a share of what they cover and lap cut out: it becomes trim.</summary>
    internal Strip CutOut(double share)
    {
        // Each part is rounded by itself; trim takes what is left, so that the piece is still all accounted for.
        double coverUm = Math.Round(this.coverUm * (1 - share));
        double lapUm = Math.Round(this.LapUm * (1 - share));
        return new Strip(
            this.Stock, this.lengthUm / 1e3, this.Count, this.Purpose, this.MaySplice, coverUm / 1e3, (this.lengthUm - coverUm - lapUm) / 1e3);
    }

    /// <summary>For lays: parts that were computed beside the length may exceed it by a rounding, which the cover gives up.</summary>
    internal static Strip Computed(
        StripStock stock, double lengthMm, int count, StripPurpose purpose, bool maySplice, double coverMm, double trimMm)
    {
        double length = AcceptedLength.Check(lengthMm, nameof(lengthMm));
        double room = WholeUm(length) - WholeUm(trimMm);
        if (coverMm > room + 0.002 + (length * WithAllowance.RelativeAllowance))
        {
            throw new InvalidOperationException($"A cover of {coverMm} mm does not fit a strip of {length} mm with {trimMm} mm of trim.");
        }

        return new Strip(stock, length, count, purpose, maySplice, Math.Min(coverMm, room), trimMm);
    }

    private static readonly AcceptedRange AcceptedLength = AcceptedRange.AboveUpTo(0, 1e9, "mm");

    private static double WholeUm(double mm) => ToMicrometers(mm) / 1e3;

    private static long ToMicrometers(double mm) => (long)Math.Round(mm * 1e3, MidpointRounding.AwayFromZero);

    private static double Accepted(Length length, string parameter) =>
        AcceptedLength.Check(UnitConversions.Millimeters(length), parameter);

    private static double Part(Length length, string parameter) =>
        AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(length), parameter);
}
