using System.Globalization;
using SacrificialTape.Quantities;
using SacrificialTape.Tapes;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>One combination that a choice has tried.</summary>
public sealed record TriedLay
{
    private readonly StoredNumber lapMm;

    internal TriedLay(StripStock stock, double lapMm, int passes, string maker)
    {
        this.Stock = stock;
        this.lapMm = new StoredNumber(lapMm);
        this.Passes = passes;
        this.Maker = maker;
    }

    /// <summary>The strip.</summary>
    public StripStock Stock { get; }

    /// <summary>The least lap.</summary>
    public Length LeastLap => Length.FromMillimeters(this.LapMm);

    /// <summary>Passes over one another.</summary>
    public int Passes { get; }

    /// <summary>Name of the kind of lay.</summary>
    public string Maker { get; }

    internal double LapMm => this.lapMm.Bare;

    /// <summary>The combination in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Stock}, {this.Maker}, lap {this.LapMm:0.###} mm, {this.Passes} pass(es)");

    /// <summary>
    /// A total order over whatever can be tried: no two different combinations tie, so that the result cannot depend on
    /// the order in which they were given.
    /// </summary>
    internal static int Compare(TriedLay one, TriedLay other)
    {
        int order = string.CompareOrdinal(one.Maker, other.Maker);
        order = order != 0 ? order : one.Passes.CompareTo(other.Passes);
        order = order != 0 ? order : one.LapMm.CompareTo(other.LapMm);
        return order != 0 ? order : Numbers(one.Stock).SequenceCompareTo(Numbers(other.Stock));
    }

    // Everything that two stocks can differ in; what is not stated comes first.
    private static Span<double> Numbers(StripStock stock) => new double[]
    {
        stock.Tape.Foil.ThicknessMm,
        stock.WidthMm,
        stock.RollMm,
        stock.Tape.Facing is { } facing ? UnitConversions.Millimeters(facing.Thickness) : -1,
        UnitConversions.Millimeters(stock.Tape.Adhesive.Thickness),
        stock.Tape.Foil.LeastThicknessMm,
        stock.Tape.Foil.KilogramsPerCubicMeter,
        stock.Tape.Adhesive.ContactResistivity?.OhmSquareCentimeters ?? -1,
    };
}
