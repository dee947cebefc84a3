using System.Globalization;
using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Inspection;

/// <summary>A thickness at an age of the tape.</summary>
/// <remarks>Age and thickness: more than zero.</remarks>
public sealed record ThicknessPoint
{
    private readonly StoredNumber years;
    private readonly StoredNumber micrometers;

    /// <summary>Describes a point.</summary>
    /// <param name="age">Time since the tape was laid, more than zero.</param>
    /// <param name="thickness">Thickness of the zinc then, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Age or thickness is zero or less.</exception>
    public ThicknessPoint(Duration age, Length thickness)
    {
        this.years = new StoredNumber(CheckAge(age));
        this.micrometers = new StoredNumber(AcceptedRange.Above(0, "um").Check(UnitConversions.Micrometers(thickness), nameof(thickness)));
    }

    /// <summary>Time since the tape was laid.</summary>
    public Duration Age => UnitConversions.FromYears(this.Years);

    /// <summary>Thickness of the zinc then.</summary>
    public Length Thickness => Length.FromMicrometers(this.Um);

    internal double Years => this.years.Bare;

    internal double Um => this.micrometers.Bare;

    /// <summary>Age and thickness in a few words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.Um:0.##} um at {this.Years:0.##} a");

    internal static double CheckAge(Duration age) =>
        AcceptedRange.AboveUpTo(0, 1000, "a").Noting("at no age nothing is lost yet").Check(UnitConversions.Years(age), nameof(age));
}
