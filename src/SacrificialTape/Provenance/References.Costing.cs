namespace SacrificialTape.Provenance;

/// <content>Documents on money and time.</content>
public static partial class References
{
    /// <summary>Factors of compound interest.</summary>
    internal static SourceReference CompoundInterestFactors { get; } = new(
        "engineering-economics-factors",
        "Reference sheet 'Engineering Economics' of an engineering examination (title page not seen)",
        "table of factors and their formulas",
        "Formulas: single-payment present worth (1 + i)^-n; capital recovery i (1 + i)^n / ((1 + i)^n - 1); uniform-series present worth ((1 + i)^n - 1) / (i (1 + i)^n)",
        SourceReading.FirstHand);

    /// <summary>Worth of a series without end.</summary>
    internal static SourceReference CapitalizedCost { get; } = new(
        "ie-492-engineering-economics",
        "IE 492 Engineering Economics, lecture notes",
        "slides 11 and 12, capital recovery and capitalized equivalent",
        "A / i for a yearly amount without end; capital recovery at 10 % over 100 years, 0.10001",
        SourceReading.FirstHand);

    /// <summary>Decimal digits of currencies.</summary>
    internal static SourceReference CurrencyMinorUnits { get; } = new(
        "iso-4217-minor-units",
        "ISO 4217",
        "list of currency codes, column minor unit",
        "Decimal digits of common currencies: 0, 2 or 3",
        SourceReading.Recalled);

    private static IEnumerable<SourceReference> Costing => [CompoundInterestFactors, CapitalizedCost, CurrencyMinorUnits];
}
