using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Tapes;

/// <summary>A plastic film over the foil, for acid, alkali or solvent surroundings. It does not conduct, so laps over it do not either.</summary>
/// <remarks>Thickness: more than 0, at most 1 mm.</remarks>
public sealed record FacingFilm
{
    private readonly StoredNumber thicknessMm;

    /// <summary>Describes a facing film.</summary>
    /// <param name="thickness">Thickness, more than 0, at most 1 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside its range.</exception>
    public FacingFilm(Length thickness) => this.thicknessMm = new StoredNumber(
        AcceptedRange.AboveUpTo(0, 1, "mm").Check(UnitConversions.Millimeters(thickness), nameof(thickness)));

    /// <summary>Thickness.</summary>
    public Length Thickness => Length.FromMillimeters(this.thicknessMm.Bare);

    /// <summary>Thickness in a few words.</summary>
    public override string ToString() => $"facing film {MeasureText.Write(this.thicknessMm.Bare, TradeUnit.Millimeter, 6)}";
}
