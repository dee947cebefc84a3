using SacrificialTape.Quantities;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Documents;

/// <summary>Lives in documents: a time, or the word for one without end.</summary>
internal static class LifetimeText
{
    private const string Unlimited = "unlimited";

    /// <summary>A life; an arbitrary one, with a fault, where it cannot be read.</summary>
    internal static Lifetime Read(FormReader reader, string name) =>
        reader.Node.Members.TryGetValue(name, out DocumentNode? member) && member.Text == Unlimited && reader.Text(name).Length > 0
            ? Lifetime.Unlimited
            : NotNegative(reader, name);

    internal static void Write(FormWriter writer, string name, Lifetime life)
    {
        if (life.IsUnlimited)
        {
            writer.Text(name, Unlimited);
            return;
        }

        writer.Number(name, life.Years, TradeUnit.Year);
    }

    // A life is made before the thing that it belongs to, so that its own range is told here.
    private static Lifetime NotNegative(FormReader reader, string name)
    {
        double years = reader.Number(name, TradeUnit.Year);
        if (years >= 0)
        {
            return Lifetime.OfYears(years);
        }

        reader.Context.Faults.Add(reader.Node.Members[name], FormattableString.Invariant($"{years} a is outside the accepted range: at least 0 a, or '{Unlimited}'."));
        return Lifetime.Unlimited;
    }
}
