using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Contact;

/// <summary>Windows of bare steel in the paint, all alike, through which the tape touches the steel.</summary>
/// <remarks>Count: zero or more. Window area: more than 0, at most 1 m2.</remarks>
public sealed record ContactWindows
{
    private readonly StoredNumber windowM2;

    /// <summary>Describes windows.</summary>
    /// <param name="count">How many on the surface.</param>
    /// <param name="windowArea">Bare area of one.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public ContactWindows(int count, Area windowArea)
    {
        AcceptedRange.Between(0, int.MaxValue, "windows").Check(count);
        this.Count = count;
        this.windowM2 = new StoredNumber(AcceptedRange.AboveUpTo(0, 10_000, "cm2")
            .Check(UnitConversions.SquareMeters(windowArea) * 1e4, nameof(windowArea)) / 1e4);
    }

    /// <summary>How many on the surface.</summary>
    public int Count { get; }

    /// <summary>Bare area of one.</summary>
    public Area WindowArea => Area.FromSquareMeters(this.WindowM2);

    internal double WindowM2 => this.windowM2.Bare;

    /// <summary>Count and size in a few words.</summary>
    public override string ToString() => $"{this.Count} window(s) of {MeasureText.Write(this.WindowM2 * 1e4, TradeUnit.SquareCentimeter, 6)}";
}
