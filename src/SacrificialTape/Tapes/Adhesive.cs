using SacrificialTape.Quantities;
using UnitsNet;

namespace SacrificialTape.Tapes;

/// <summary>The conductive adhesive under the foil. It conducts only where it is pressed onto bare metal.</summary>
/// <remarks>Thickness: more than 0, at most 1 mm. Contact resistivity: as measured; a fresh value is not one at the end of life.</remarks>
public sealed record Adhesive
{
    private readonly StoredNumber thicknessMm;

    /// <summary>Describes an adhesive.</summary>
    /// <param name="thickness">Thickness, more than 0, at most 1 mm.</param>
    /// <param name="contactResistivity">Measured contact resistivity, if known.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside its range.</exception>
    public Adhesive(Length thickness, ContactResistivity? contactResistivity = null)
    {
        this.thicknessMm = new StoredNumber(
            AcceptedRange.AboveUpTo(0, 1, "mm").Check(UnitConversions.Millimeters(thickness), nameof(thickness)));
        this.ContactResistivity = contactResistivity;
    }

    /// <summary>Thickness.</summary>
    public Length Thickness => Length.FromMillimeters(this.thicknessMm.Bare);

    /// <summary>Measured contact resistivity, if known.</summary>
    public ContactResistivity? ContactResistivity { get; }

    /// <summary>Thickness in a few words.</summary>
    public override string ToString() => $"adhesive {MeasureText.Write(this.thicknessMm.Bare, TradeUnit.Millimeter, 6)}";
}
