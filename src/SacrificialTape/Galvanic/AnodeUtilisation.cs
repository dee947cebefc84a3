using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Galvanic;

/// <summary>How much of a cast anode is used before it no longer delivers, by its shape (recalled, check before use).</summary>
/// <remarks>Of thin foil on adhesive no published figure was found: take the usable share of the rule set, 0.8 by judgement.</remarks>
public static class AnodeUtilisation
{
    /// <summary>On what the figures rest.</summary>
    public static Basis Basis => Basis.From(References.DnvCathodicProtection);

    /// <summary>The design figure of a shape.</summary>
    /// <param name="shape">The shape.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a shape of the table.</exception>
    public static Utilisation Of(AnodeShape shape) => Utilisation.FromFraction(shape switch
    {
        AnodeShape.LongStandOff => 0.90,
        AnodeShape.ShortStandOff => 0.85,
        AnodeShape.LongFlush => 0.85,
        AnodeShape.ShortFlushBraceletOrOther => 0.80,
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "Not a shape of the table."),
    });
}
