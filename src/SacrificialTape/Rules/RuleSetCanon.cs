using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>
/// The one way to write down what a rule set means: rules in the order of their ids, limits in canonical units cut to
/// the digits that equality compares, each text with its length before it, so that no two sets share a form.
/// </summary>
internal static class RuleSetCanon
{
    internal static Fingerprint Fingerprint(RuleSet rules) =>
        Rules.Fingerprint.OfHash(SHA256.HashData(Encoding.UTF8.GetBytes(Text(rules))));

    internal static string Text(RuleSet rules)
    {
        var text = new StringBuilder(64 * 1024);
        Write(text, "rule-set/1");
        Write(text, rules.Name);
        Write(text, rules.Version);
        foreach (Rule rule in rules.Rules.OrderBy(static rule => rule.Id, StringComparer.Ordinal))
        {
            text.Append('\n');
            Write(text, rule.Id);
            Write(text, rule.Title);
            Write(text, Word(rule.Kind));
            Write(text, rule.Limit);
            Write(text, Word(rule.Severity));
            Write(text, rule.Basis);
            Write(text, rule.Remedy);
            Write(text, rule.Validity);
        }

        return text.ToString();
    }

    // The name and not the number of a choice: a new choice in the middle of the list must not move a fingerprint.
    private static string Word<T>(T choice)
        where T : struct, Enum => choice.ToString();

    private static void Write(StringBuilder text, Measure? limit)
    {
        if (limit is not { } measure)
        {
            Write(text, string.Empty);
            return;
        }

        (TradeUnit canonical, double number) = measure.Key;
        Write(text, string.Create(CultureInfo.InvariantCulture, $"{number:E14} {TradeUnits.Symbol(canonical)}"));
    }

    private static void Write(StringBuilder text, Basis basis)
    {
        Write(text, Word(basis.Kind));
        Write(text, basis.Note);
        if (basis.Source is { } source)
        {
            Write(text, source.Id);
            Write(text, source.Document);
            Write(text, source.Clause);
            Write(text, source.Taken);
            Write(text, Word(source.Reading));
        }
        else
        {
            Write(text, string.Empty);
        }
    }

    private static void Write(StringBuilder text, ValidityPeriod? validity)
    {
        Write(text, validity?.From is { } from ? ValidityPeriod.Day(from) : string.Empty);
        Write(text, validity?.Until is { } until ? ValidityPeriod.Day(until) : string.Empty);
    }

    private static void Write(StringBuilder text, string part) =>
        text.Append(CultureInfo.InvariantCulture, $"{part.Length}:").Append(part).Append(';');
}
