using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>A stretch of surface under a film.</summary>
/// <remarks>Width: 0.001 mm to 100 m.</remarks>
public sealed record FilmSegment
{
    internal static readonly AcceptedRange AcceptedWidth = AcceptedRange.Between(0.001, 100_000, "mm");

    private readonly StoredNumber widthMm;

    /// <summary>Describes a stretch.</summary>
    /// <param name="electrode">What it is.</param>
    /// <param name="width">How wide it is.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is outside its range.</exception>
    public FilmSegment(Electrode electrode, Length width)
    {
        ArgumentNullException.ThrowIfNull(electrode);
        this.Electrode = electrode;
        this.widthMm = new StoredNumber(AcceptedWidth.Check(UnitConversions.Millimeters(width), nameof(width)));
    }

    /// <summary>What it is.</summary>
    public Electrode Electrode { get; }

    /// <summary>How wide it is.</summary>
    public Length Width => Length.FromMillimeters(this.WidthMm);

    internal double WidthMm => this.widthMm.Bare;

    /// <summary>Name and width in a few words.</summary>
    public override string ToString() => $"{this.Electrode.Name}, {MeasureText.Write(this.WidthMm, TradeUnit.Millimeter, 6)}";
}
