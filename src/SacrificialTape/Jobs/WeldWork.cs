using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Surfaces;
using SacrificialTape.Tapes;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Jobs;

/// <summary>The weld seams of a line and the strip that goes along each before the main lay.</summary>
/// <remarks>End lap: zero or more.</remarks>
public sealed record WeldWork : IHasWorkings
{
    private readonly StoredNumber endLapMm;

    /// <summary>Describes the welds of a line.</summary>
    /// <param name="seams">The seams, at least one.</param>
    /// <param name="stock">The strip along them.</param>
    /// <param name="endLap">Lap of a closed strip on its own end.</param>
    /// <exception cref="ArgumentException">There is no seam.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The end lap is negative.</exception>
    public WeldWork(IEnumerable<WeldSeam> seams, StripStock stock, Length endLap)
    {
        ValueList<WeldSeam> allSeams = seams.Listed();
        ArgumentNullException.ThrowIfNull(stock);
        if (allSeams.Count == 0)
        {
            throw new ArgumentException("Weld work needs at least one seam; leave it out where there is none.", nameof(seams));
        }

        this.Seams = allSeams;
        this.Stock = stock;
        this.endLapMm = new StoredNumber(
            AcceptedRange.AtLeast(0, "mm").Check(UnitConversions.Millimeters(endLap), nameof(endLap)));
        this.Strips = new ValueList<Strip>(allSeams.Select(seam => WeldStrips.For(seam, stock, endLap)));
    }

    /// <summary>The seams.</summary>
    public ValueList<WeldSeam> Seams { get; }

    /// <summary>The strip along them.</summary>
    public StripStock Stock { get; }

    /// <summary>Lap of a closed strip on its own end.</summary>
    public Length EndLap => Length.FromMillimeters(this.endLapMm.Bare);

    /// <summary>The strips to cut, seam by seam.</summary>
    public ValueList<Strip> Strips { get; }

    /// <inheritdoc/>
    public Workings ShowWorkings()
    {
        var steps = new StepList();
        foreach (WeldSeam seam in this.Seams)
        {
            _ = WeldStrips.LengthMm(seam, this.endLapMm.Bare, steps);
        }

        return steps.Under("Strips along welds");
    }

    /// <summary>The seams and their strip in a few words.</summary>
    public override string ToString() => $"{string.Join(", ", this.Seams)}, strip {this.Stock}";
}
