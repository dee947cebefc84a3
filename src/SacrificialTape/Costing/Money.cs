using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using SacrificialTape.Quantities;

namespace SacrificialTape.Costing;

/// <summary>An amount in one currency. The amount is a decimal: sums and differences of prices are exact.</summary>
/// <remarks>
/// <para>Currency: three capital letters, as in ISO 4217; whether the code is in use is not checked. Range: that of
/// <see cref="decimal"/>; negative amounts are credits. Nothing is rounded unless <see cref="Rounded(int)"/> asks for it.</para>
/// <para>Equality: amount and code, 1 and 1.00 are one amount. Two currencies are never added or compared: the error
/// names both. <c>default</c> is unset and says so when read.</para>
/// </remarks>
public readonly record struct Money : IComparable<Money>, IComparable
{
    private readonly decimal amount;
    private readonly string? currency;

    /// <summary>States an amount.</summary>
    /// <param name="amount">The amount, in the major unit of the currency.</param>
    /// <param name="currency">Three capital letters, for instance <c>EUR</c>.</param>
    /// <exception cref="ArgumentException">The code is not three capital letters.</exception>
    public Money(decimal amount, string currency)
    {
        ArgumentNullException.ThrowIfNull(currency);
        if (!IsCode(currency))
        {
            throw new ArgumentException(
                $"'{currency}' is not a currency code: three capital letters as in ISO 4217, for instance EUR.", nameof(currency));
        }

        this.amount = amount;
        this.currency = currency;
    }

    /// <summary>The amount, in the major unit of the currency.</summary>
    public decimal Amount => this.currency is null ? throw Unset() : this.amount;

    /// <summary>The code of the currency.</summary>
    public string Currency => this.currency ?? throw Unset();

    /// <summary>Adds two amounts of one currency.</summary>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public static Money operator +(Money left, Money right) => left.Add(right);

    /// <summary>Subtracts an amount of the same currency.</summary>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public static Money operator -(Money left, Money right) => left.Subtract(right);

    /// <summary>The opposite amount: a cost becomes a credit.</summary>
    public static Money operator -(Money money) => money.Negate();

    /// <summary>So many times the amount.</summary>
    public static Money operator *(Money money, decimal factor) => money.Multiply(factor);

    /// <summary>So many times the amount.</summary>
    public static Money operator *(decimal factor, Money money) => money.Multiply(factor);

    /// <summary>A part of the amount, to 28 digits and not rounded to what can be paid.</summary>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Money operator /(Money money, decimal divisor) => money.Divide(divisor);

    /// <summary>Whether one amount is below another of the same currency.</summary>
    public static bool operator <(Money left, Money right) => left.CompareTo(right) < 0;

    /// <summary>Whether one amount is above another of the same currency.</summary>
    public static bool operator >(Money left, Money right) => left.CompareTo(right) > 0;

    /// <summary>Whether one amount is at most another of the same currency.</summary>
    public static bool operator <=(Money left, Money right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one amount is at least another of the same currency.</summary>
    public static bool operator >=(Money left, Money right) => left.CompareTo(right) >= 0;

    /// <summary>Reads an amount from text: a number with a decimal point, a space, a code.</summary>
    /// <param name="text">For instance <c>12.50 EUR</c>; a comma is refused.</param>
    /// <exception cref="FormatException">The text is not such an amount.</exception>
    public static Money Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return TryParse(text, out Money money)
            ? money
            : throw new FormatException(
                $"'{text}' is not an amount of money. Expected a number with a decimal point and a code, as in '12.50 EUR'.");
    }

    /// <summary>Reads an amount from text, or says false.</summary>
    /// <param name="text">For instance <c>12.50 EUR</c>.</param>
    /// <param name="money">The amount.</param>
    public static bool TryParse([NotNullWhen(true)] string? text, out Money money)
    {
        money = default;
        string[] parts = (text ?? string.Empty).Trim().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        const NumberStyles Strict = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (parts.Length != 2 || !IsCode(parts[1])
            || !decimal.TryParse(parts[0], Strict, CultureInfo.InvariantCulture, out decimal amount))
        {
            return false;
        }

        money = new Money(amount, parts[1]);
        return true;
    }

    /// <summary>Adds an amount of the same currency.</summary>
    /// <param name="other">The other amount.</param>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public Money Add(Money other) => new(this.Amount + this.Same(other).amount, this.Currency);

    /// <summary>Subtracts an amount of the same currency.</summary>
    /// <param name="other">The other amount.</param>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public Money Subtract(Money other) => new(this.Amount - this.Same(other).amount, this.Currency);

    /// <summary>The opposite amount: a cost becomes a credit.</summary>
    public Money Negate() => new(-this.Amount, this.Currency);

    /// <summary>So many times the amount.</summary>
    /// <param name="factor">Any number.</param>
    public Money Multiply(decimal factor) => new(this.Amount * factor, this.Currency);

    /// <summary>A part of the amount, to 28 digits and not rounded to what can be paid.</summary>
    /// <param name="divisor">Any number but zero.</param>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public Money Divide(decimal divisor) => new(this.Amount / divisor, this.Currency);

    /// <summary>Rounds to the minor unit of the currency, halves away from zero.</summary>
    /// <exception cref="InvalidOperationException">The currency is not in <see cref="MinorUnits"/>: state the digits.</exception>
    public Money Rounded() => this.Rounded(MinorUnits.DigitsOf(this.Currency));

    /// <summary>Rounds to a number of decimal digits, halves away from zero.</summary>
    /// <param name="minorDigits">0 to 8.</param>
    /// <exception cref="ArgumentOutOfRangeException">The digits are outside their range.</exception>
    public Money Rounded(int minorDigits) => new(
        decimal.Round(this.Amount, MinorUnits.Check(minorDigits), MidpointRounding.AwayFromZero), this.Currency);

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The currencies differ.</exception>
    public int CompareTo(Money other) => this.Amount.CompareTo(this.Same(other).amount);

    /// <summary>The same order for callers that know no type; null comes first.</summary>
    /// <exception cref="ArgumentException">The other one is of another type.</exception>
    int IComparable.CompareTo(object? obj) => UntypedOrder.Of(this, obj);

    /// <summary>Amount and code as invariant text: every digit of the amount, and at least those of its minor unit where that is known.</summary>
    public override string ToString()
    {
        if (this.currency is null)
        {
            return "unset";
        }

        int digits = MinorUnits.Known(this.currency) ?? 0;
        string format = "0." + new string('0', digits) + new string('#', 28 - digits);
        return this.amount.ToString(format, CultureInfo.InvariantCulture) + " " + this.currency;
    }

    /// <summary>
    /// Where a factor in double meets money: it is taken to 15 significant digits, all that a double surely holds, and
    /// multiplied in decimal. The relative error is below 5e-15 and no two machines differ.
    /// </summary>
    internal Money Times(double factor) => Math.Abs(factor) < 1e27
        ? this.Multiply((decimal)factor)
        : throw new OverflowException(string.Create(
            CultureInfo.InvariantCulture, $"The factor {factor:G6} is too large for an amount of money. A rate near -1 over a long time makes such factors."));

    /// <summary>The other amount, if it is of this currency.</summary>
    internal Money Same(Money other) => this.Currency == other.Currency
        ? other
        : throw new ArgumentException(
            $"{this.Currency} and {other.Currency} cannot be mixed. Convert one of them first, at a rate of your own.", nameof(other));

    /// <summary>The amount as a price: zero or more.</summary>
    internal Money Price(string parameter)
    {
        Quantities.AcceptedRange.AtLeast(0, this.Currency).Check((double)this.Amount, parameter);
        return this;
    }

    private static bool IsCode(string text) => text.Length == 3 && text.All(char.IsAsciiLetterUpper);

    private static InvalidOperationException Unset() =>
        new($"This {nameof(Money)} is unset: it is a default value that no constructor has filled.");
}
