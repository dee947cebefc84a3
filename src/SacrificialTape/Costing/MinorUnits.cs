using System.Collections.Frozen;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>How many decimal digits the amounts of common currencies have when they are paid. For others, state the digits.</summary>
public static class MinorUnits
{
    private static readonly FrozenDictionary<string, int> Digits = Table(
        ("CLP ISK JPY KRW PYG RWF UGX VND XAF XOF XPF", 0),
        ("AED AUD BRL CAD CHF CNY CZK DKK EUR GBP HKD HUF IDR INR MXN MYR NOK NZD PLN QAR RON SAR SEK SGD THB TRY USD ZAR", 2),
        ("BHD IQD JOD KWD LYD OMR TND", 3));

    /// <summary>On what the table rests.</summary>
    public static Basis Basis { get; } = Basis.From(References.CurrencyMinorUnits);

    /// <summary>The decimal digits of a currency.</summary>
    /// <param name="currency">Its code.</param>
    /// <exception cref="InvalidOperationException">The currency is not in the table: state the digits.</exception>
    public static int DigitsOf(string currency)
    {
        ArgumentNullException.ThrowIfNull(currency);
        return Known(currency) ?? throw new InvalidOperationException(
            $"The minor unit of {currency} is not in the table. State the number of digits.");
    }

    internal static int? Known(string currency) => Digits.TryGetValue(currency, out int digits) ? digits : null;

    internal static int Check(int minorDigits)
    {
        AcceptedRange.Between(0, 8, "digits").Check(minorDigits);
        return minorDigits;
    }

    private static FrozenDictionary<string, int> Table(params (string Codes, int Digits)[] rows) => rows
        .SelectMany(static row => row.Codes.Split(' ').Select(code => (code, row.Digits)))
        .ToFrozenDictionary(static one => one.code, static one => one.Digits, StringComparer.Ordinal);
}
