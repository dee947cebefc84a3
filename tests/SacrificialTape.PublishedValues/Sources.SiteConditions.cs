using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <content>Humidity and surfaces.</content>
internal static partial class Sources
{
    internal static SourceReference DewPointTable { get; } = new(
        "coating-dew-point-table", "Dew-point table for coating work, published by the trade; a second table and a glossary agree", "rows from 2 to 30 degC",
        "Dew points to 0.1 degC; 23.7 at 30 degC and 65 % is a misprint", SourceReading.FirstHand);

    internal static SourceReference SaturationTable { get; } = new(
        "ashrae-2017-chapter-1", "ASHRAE Handbook, Fundamentals, 2017, chapter 1, as the tests of an open psychrometric library carry it", "Table 3; example 1",
        "103.24, 401.74, 872.6, 3169.7 and 12351.3 Pa at -20, -5, 5, 25 and 50 degC; 40 degC, wet bulb 20 degC: 14 %, 7 degC", SourceReading.SecondHand);

    internal static SourceReference PsychrometerExample { get; } = new(
        "fao-56-example-4", "Allen et al., FAO Irrigation and Drainage Paper 56, 1998", "example 4",
        "25.6 and 19.5 degC, aspirated, 87.9 kPa: 1.91 kPa", SourceReading.Recalled);

    internal static SourceReference TetensAt15 { get; } = new(
        "fao-56-at-15", "Documentation of an open meteorological language, function for the actual vapour pressure of FAO-56", "example 1",
        "1.70535 kPa at 15 degC", SourceReading.FirstHand);

    internal static SourceReference MarginInFahrenheit { get; } = new(
        "margin-5-fahrenheit", "Practice of SSPC and NACE", "surface above the dew point",
        "5 degF", SourceReading.Recalled);

    internal static SourceReference OffshoreSalts { get; } = new(
        "offshore-salts-20", "NORSOK M-501; ISO 12944-9", "soluble salts",
        "20 mg/m2", SourceReading.Recalled);
}
