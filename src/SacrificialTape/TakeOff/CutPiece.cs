using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.TakeOff;

/// <summary>A number of pieces of one length: asked for, cut from a roll, or left of it.</summary>
/// <remarks>Length: more than 0, at most 1000 km, counted in whole micrometres. Count: at least 1.</remarks>
public sealed record CutPiece
{
    private static readonly AcceptedRange AcceptedLength = AcceptedRange.AboveUpTo(0, 1e9, "mm");

    /// <summary>Describes pieces.</summary>
    /// <param name="length">Length of one piece.</param>
    /// <param name="count">How many.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public CutPiece(Length length, long count)
        : this(WholeUm(length, nameof(length)), count)
    {
    }

    internal CutPiece(long lengthUm, long count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        this.LengthUm = lengthUm;
        this.Count = count;
    }

    /// <summary>Length of one piece.</summary>
    public Length Length => Length.FromMicrometers(this.LengthUm);

    /// <summary>How many pieces.</summary>
    public long Count { get; }

    internal long LengthUm { get; }

    /// <summary>Count and length, for instance <c>3 x 1.38 m</c>.</summary>
    public override string ToString() => $"{this.Count} x {MeasureText.Write(this.LengthUm / 1e6, TradeUnit.Meter, 9)}";

    /// <summary>A length as it is cut: in whole micrometres, at least one.</summary>
    internal static long WholeUm(Length length, string parameter) => Math.Max(
        1, (long)Math.Round(AcceptedLength.Check(UnitConversions.Millimeters(length), parameter) * 1e3, MidpointRounding.AwayFromZero));
}
