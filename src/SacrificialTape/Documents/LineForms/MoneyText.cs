using System.Globalization;
using SacrificialTape.Costing;

namespace SacrificialTape.Documents;

/// <summary>Amounts of money in documents: a number with a decimal point and a currency code.</summary>
internal static class MoneyText
{
    /// <summary>An amount; an arbitrary one, with a fault, where it cannot be read.</summary>
    internal static Money Read(FormReader reader, string name)
    {
        if (reader.Members.Text(name, "an amount, as in '12.50 EUR'") is not { } text)
        {
            return new Money(1, "XXX");
        }

        if (Money.TryParse(text, out Money money))
        {
            return money;
        }

        reader.Context.Faults.Add(
            reader.Node.Members[name], $"'{DocumentTree.Short(text)}' is not an amount of money. Expected a number with a decimal point and a code, as in '12.50 EUR'.");
        return new Money(1, "XXX");
    }

    // A decimal keeps how many digits it was given: 12.50 stays 12.50.
    internal static void Write(FormWriter writer, string name, Money money) =>
        writer.Text(name, string.Create(CultureInfo.InvariantCulture, $"{money.Amount} {money.Currency}"));
}
