using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>A spot: readings of the gauge within a circle of some 4 cm, of which the mean counts.</summary>
/// <remarks>At least 3 readings, each more than 0, at most 20 mm.</remarks>
public sealed record AcceptanceSpot
{
    private readonly StoredNumber mean;

    /// <summary>Describes a spot.</summary>
    /// <param name="readings">Its readings, at least 3.</param>
    /// <exception cref="ArgumentException">Fewer than 3 readings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its range.</exception>
    public AcceptanceSpot(IEnumerable<Length> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        double[] um = [.. readings.Select(static one => AcceptedRange.AboveUpTo(0, 20_000, "um").Check(UnitConversions.Micrometers(one), nameof(readings)))];
        if (um.Length < 3)
        {
            throw new ArgumentException(FormattableString.Invariant($"A spot has at least 3 readings; {um.Length} given."), nameof(readings));
        }

        this.Readings = um.Length;
        this.mean = new StoredNumber(um.Average());
    }

    /// <summary>How many readings.</summary>
    public int Readings { get; }

    /// <summary>Their mean.</summary>
    public Length Mean => Length.FromMicrometers(this.mean.Bare);

    internal double MeanUm => this.mean.Bare;

    /// <summary>Mean and count.</summary>
    public override string ToString() => FormattableString.Invariant($"{this.mean.Bare:0.##} um of {this.Readings} readings");
}
