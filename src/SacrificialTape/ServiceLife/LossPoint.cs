using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.ServiceLife;

/// <summary>A measured point: so much was lost after such a time.</summary>
/// <remarks>Range: time and loss more than zero; that nothing is lost in no time goes without saying.</remarks>
public sealed record LossPoint
{
    private readonly StoredNumber years;
    private readonly StoredNumber micrometers;

    /// <summary>Describes a point.</summary>
    /// <param name="time">Time since the metal was laid bare, more than zero.</param>
    /// <param name="loss">Thickness lost from one face by then, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Time or loss is zero or less.</exception>
    public LossPoint(Duration time, Length loss)
    {
        this.years = new StoredNumber(AcceptedRange.Above(0, "a").Check(UnitConversions.Years(time), nameof(time)));
        this.micrometers = new StoredNumber(AcceptedRange.Above(0, "um").Check(UnitConversions.Micrometers(loss), nameof(loss)));
    }

    /// <summary>Time since the metal was laid bare.</summary>
    public Duration Time => UnitConversions.FromYears(this.Years);

    /// <summary>Thickness lost from one face by then.</summary>
    public Length Loss => Length.FromMicrometers(this.Um);

    internal double Years => this.years.Bare;

    internal double Um => this.micrometers.Bare;

    /// <summary>Time and loss in a few words.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Um:0.######} um after {this.Years:0.######} a");
}
