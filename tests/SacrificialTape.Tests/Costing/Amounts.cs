using FsCheck.Xunit;

namespace SacrificialTape.Tests.Costing;

/// <summary>Money adds exactly, keeps its currency and is rounded only when asked.</summary>
public sealed class Amounts
{
    [Property]
    public void Sums_are_exact_whatever_the_order(int[] cents)
    {
        Money[] amounts = [.. cents.Select(static one => new Money(one / 100m, "EUR"))];
        Money forward = amounts.Aggregate(new Money(0, "EUR"), static (sum, one) => sum + one);
        Money backward = amounts.Reverse().Aggregate(new Money(0, "EUR"), static (sum, one) => sum + one);
        Assert.Equal(forward, backward);
        Assert.Equal(cents.Sum(static one => (long)one), (long)(forward.Amount * 100));
    }

    [Property]
    public void Minus_undoes_plus_and_scaling_is_linear(int one, int two, short factor)
    {
        Money a = new(one / 1000m, "USD");
        Money b = new(two / 1000m, "USD");
        Assert.Equal(a, a + b - b);
        Assert.Equal(new Money(0, "USD"), a + -a);
        Assert.Equal((a + b) * factor, (factor * a) + (b * factor));
    }

    [Property]
    public void Currencies_never_mix(int one, int two)
    {
        Money euro = new(one, "EUR");
        Money dollar = new(two, "USD");
        foreach (Func<object> mix in new Func<object>[]
        {
            () => euro + dollar, () => euro - dollar, () => euro < dollar, () => euro >= dollar, () => euro > dollar, () => euro <= dollar, () => euro.CompareTo(dollar),
        })
        {
            ArgumentException thrown = Assert.Throws<ArgumentException>(() => { _ = mix(); });
            Assert.Contains("EUR and USD cannot be mixed", thrown.Message, StringComparison.Ordinal);
        }

        Assert.NotEqual(new Money(one, "EUR"), new Money(one, "USD"));
    }

    [Property]
    public void Text_is_read_back(int units, int digits)
    {
        Money money = new(units + (Math.Abs(digits % 100_000) / 100_000m), "CHF");
        Assert.Equal(money, Money.Parse(money.ToString()));
    }

    [Theory]
    [InlineData("2.5", "JPY", "3 JPY")]
    [InlineData("-2.5", "JPY", "-3 JPY")]
    [InlineData("2.345", "EUR", "2.35 EUR")]
    [InlineData("2.3449", "EUR", "2.34 EUR")]
    [InlineData("1.0005", "KWD", "1.001 KWD")]
    [InlineData("7", "EUR", "7.00 EUR")]
    public void Rounding_goes_to_the_minor_unit_and_halves_away_from_zero(string amount, string currency, string rounded) =>
        Assert.Equal(rounded, new Money(decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture), currency).Rounded().ToString());

    [Fact]
    public void Nothing_is_rounded_unless_asked()
    {
        Assert.Equal("12.3456 EUR", new Money(12.3456m, "EUR").ToString());
        Assert.Equal("12.50 EUR", new Money(12.5m, "EUR").ToString());
        Assert.Equal("12.5 XYZ", new Money(12.50m, "XYZ").ToString());
        Assert.Equal(new Money(1m, "EUR"), new Money(1.000m, "EUR"));
        Assert.Equal(new Money(1m, "EUR").GetHashCode(), new Money(1.000m, "EUR").GetHashCode());
        Assert.Equal(new Money(10, "EUR"), new Money(30, "EUR") / 3);
        Assert.Equal(new Money(12.3m, "XYZ"), new Money(12.34m, "XYZ").Rounded(1));
    }

    [Fact]
    public void A_currency_outside_the_table_wants_its_digits_stated()
    {
        InvalidOperationException thrown = Assert.Throws<InvalidOperationException>(static () => new Money(1, "XYZ").Rounded());
        Assert.Contains("XYZ is not in the table. State the number of digits", thrown.Message, StringComparison.Ordinal);
        Errors.Refused(static () => new Money(1, "EUR").Rounded(9), "minorDigits", "9 digits", "at least 0 and at most 8");
        Errors.Refused(static () => new Money(1, "EUR").Rounded(-1), "minorDigits", "-1 digits");
        Assert.Equal((0, 2, 3), (MinorUnits.DigitsOf("JPY"), MinorUnits.DigitsOf("EUR"), MinorUnits.DigitsOf("KWD")));
        Assert.Equal(BasisKind.Recalled, MinorUnits.Basis.Kind);
    }

    [Theory]
    [InlineData("eur")]
    [InlineData("EURO")]
    [InlineData("E")]
    [InlineData("")]
    [InlineData("€UR")]
    [InlineData("EU ")]
    public void A_code_that_is_none(string code)
    {
        ArgumentException thrown = Assert.Throws<ArgumentException>(() => new Money(1, code));
        Assert.Contains($"'{code}' is not a currency code: three capital letters", thrown.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("12,50 EUR")]
    [InlineData("12.50")]
    [InlineData("EUR 12.50")]
    [InlineData("12.50 eur")]
    [InlineData("1 000 EUR")]
    [InlineData("NaN EUR")]
    [InlineData("1e3 EUR")]
    [InlineData("")]
    public void A_text_that_is_no_amount(string text)
    {
        Assert.False(Money.TryParse(text, out _));
        Assert.Contains($"'{text}' is not an amount of money", Assert.Throws<FormatException>(() => Money.Parse(text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_with_spaces_around_is_read() => Assert.Equal(new Money(-12.5m, "EUR"), Money.Parse(" -12.5  EUR "));
}
