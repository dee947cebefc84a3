using SacrificialTape.Provenance;
using UnitsNet;

namespace SacrificialTape.Galvanic;

/// <summary>Thickness of water on metal in the open air (recalled, check before use): orders of size, not measurements.</summary>
public static class WaterFilm
{
    /// <summary>On what the figures rest.</summary>
    public static Basis Basis => Basis.From(References.WaterOnMetal);

    /// <summary>The usual thickness: 1, 10 or 100 um.</summary>
    /// <param name="wetting">How the surface came to be wet.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a case of the table.</exception>
    public static Length Of(Wetting wetting) => Length.FromMicrometers(wetting switch
    {
        Wetting.Humidity => 1,
        Wetting.Dew => 10,
        Wetting.Rain => 100,
        _ => throw new ArgumentOutOfRangeException(nameof(wetting), wetting, "Not a case of the table."),
    });
}
