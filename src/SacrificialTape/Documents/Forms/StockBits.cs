using SacrificialTape.Quantities;
using SacrificialTape.Tapes;

namespace SacrificialTape.Documents;

/// <summary>Holds stocks apart that differ in any bit: a document must not give back one for another that equals it to 15 digits.</summary>
internal sealed class StockBits : IEqualityComparer<StripStock>
{
    private StockBits()
    {
    }

    internal static StockBits Comparer { get; } = new();

    public bool Equals(StripStock? x, StripStock? y) =>
        ReferenceEquals(x, y) || (x is not null && y is not null && Numbers(x).SequenceEqual(Numbers(y)));

    public int GetHashCode(StripStock obj) => HashCode.Combine(obj.WidthMm, obj.RollMm, obj.Tape.Foil.ThicknessMm);

    private static double[] Numbers(StripStock stock) =>
    [
        stock.WidthMm,
        stock.RollMm,
        stock.Tape.Foil.ThicknessMm,
        UnitConversions.Millimeters(stock.Tape.Foil.Tolerance),
        stock.Tape.Foil.KilogramsPerCubicMeter,
        UnitConversions.Millimeters(stock.Tape.Adhesive.Thickness),
        stock.Tape.Adhesive.ContactResistivity?.OhmSquareCentimeters ?? -1,
        stock.Tape.Facing is { } facing ? UnitConversions.Millimeters(facing.Thickness) : -1,
    ];
}
