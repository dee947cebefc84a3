using System.Globalization;

namespace SacrificialTape.Quantities;

/// <summary>How a <see cref="Measure"/> is read from and written to text: strictly, and the same under every culture.</summary>
internal static class MeasureText
{
    private const NumberStyles Strict =
        NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    /// <summary>Reads a measure; the answer is null, or what is wrong with the text.</summary>
    internal static string? Read(ReadOnlySpan<char> text, IFormatProvider? provider, out Measure measure) => Read(text, provider, null, out measure);

    /// <summary>Reads a measure; the answer is null, or what is wrong with the text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="provider">Whose decimal sign is used; null: a point.</param>
    /// <param name="wanted">A unit of the kind that does, for what is told of a unit that is not known; null where any kind does.</param>
    /// <param name="measure">The measure, of whatever kind.</param>
    internal static string? Read(ReadOnlySpan<char> text, IFormatProvider? provider, TradeUnit? wanted, out Measure measure)
    {
        measure = default;
        ReadOnlySpan<char> trimmed = text.Trim();
        int end = NumberEnd(trimmed);
        ReadOnlySpan<char> digits = trimmed[..end];
        ReadOnlySpan<char> symbol = trimmed[end..].TrimStart();

        if (digits.IsEmpty)
        {
            return $"'{text}' does not start with a number. Expected a number and a unit, as in '20 mm'.";
        }

        if (!double.TryParse(digits, Strict, provider ?? CultureInfo.InvariantCulture, out double number)
            || !double.IsFinite(number))
        {
            return digits.Contains(',')
                ? $"'{text}' has a comma in the number. Write a decimal point, as in '1.5 mm', and no thousands sign."
                : $"'{text}' does not start with a finite number. Expected a number and a unit, as in '20 mm'.";
        }

        if (!TradeUnits.TryFind(symbol, out TradeUnit unit))
        {
            return $"'{text}' has no unit known here: '{symbol}'. Case counts; {TradeUnits.ThatDo(wanted)}.";
        }

        measure = new Measure(number, unit);
        return null;
    }

    internal static string Write(double number, TradeUnit unit, int digits) => WriteIn(CultureInfo.InvariantCulture, number, unit, digits);

    internal static string WriteIn(IFormatProvider provider, double number, TradeUnit unit, int digits)
    {
        string symbol = TradeUnits.Symbol(unit);
        string written = number.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), provider);
        return symbol.Length == 0 ? written : $"{written} {symbol}";
    }

    /// <summary>The shortest text that reads back as the very same number and unit.</summary>
    internal static string Exact(Measure measure)
    {
        string symbol = TradeUnits.Symbol(measure.Unit);
        string written = measure.Number.ToString("R", CultureInfo.InvariantCulture);
        return symbol.Length == 0 ? written : $"{written} {symbol}";
    }

    // Digits, signs, points and commas belong to the number; so does an 'e' that digits follow.
    private static int NumberEnd(ReadOnlySpan<char> text)
    {
        int i = 0;
        while (i < text.Length)
        {
            char c = text[i];
            bool exponent = c is 'e' or 'E' && i > 0 && i + 1 < text.Length
                && (char.IsAsciiDigit(text[i + 1])
                    || (text[i + 1] is '+' or '-' && i + 2 < text.Length && char.IsAsciiDigit(text[i + 2])));
            if (!exponent && !char.IsAsciiDigit(c) && c is not ('.' or ',' or '+' or '-'))
            {
                break;
            }

            i++;
        }

        return i;
    }
}
