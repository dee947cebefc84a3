using System.Text.Json;
using SacrificialTape.Provenance;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Reads and writes one rule, whole or as what differs from the rule of the parent set.</summary>
internal static class RuleReader
{
    // Where the parent set limits a rule to a period and this one does not.
    private const string Always = "always";

    /// <summary>Reads a rule and its approval; the rule is null, with faults, when it cannot be read.</summary>
    internal static (string? Id, Rule? Rule, RuleApproval? Approval) Read(DocumentNode node, RuleSet? parent, FaultList faults)
    {
        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return (null, null, null);
        }

        int before = faults.Count;
        string? id = reader.Text("id", "the rule's name, for instance 'lap.minimum'");
        Rule? inherited = id is not null && parent is not null && parent.TryGet(id, out Rule? known) ? known : null;
        bool whole = Known(reader, id, inherited, parent, faults) && inherited is null;
        string? title = whole ? reader.Text("title", "what the rule is about") : reader.OptionalText("title") ?? inherited?.Title;
        string? remedy = whole ? reader.Text("remedy", "what to do when it is broken") : reader.OptionalText("remedy") ?? inherited?.Remedy;
        RuleKind? kind = reader.OptionalWord("kind", Words.Kinds) ?? inherited?.Kind;
        Severity? severity = reader.OptionalWord("severity", Words.Severities) ?? inherited?.Severity;
        Measure? limit = reader.OptionalMeasure("limit", inherited?.Limit?.Unit) ?? inherited?.Limit;
        Basis? basis = reader.Optional("basis") is { } member ? BasisReader.Read(member, faults) : inherited?.Basis;
        ValidityPeriod? validity = reader.Optional("validity") is { } period ? Validity(period, faults) : inherited?.Validity;
        RuleApproval? approval = reader.Optional("approved") is { } approved && id is not null ? Approval(approved, id, faults) : null;
        if (whole)
        {
            Need(reader, "kind", faults);
            Need(reader, "severity", faults);
            Need(reader, "basis", faults);
        }
        else if (inherited is not null)
        {
            Restates(reader, inherited, kind, limit, faults);
        }

        reader.Close();
        if (faults.Count > before || id is null || title is null || remedy is null || kind is null || severity is null || basis is null)
        {
            return (id, null, null);
        }

        if (limit is null != (kind == RuleKind.Statement))
        {
            faults.Add(node, limit is null ? "'limit' is missing: expected a number with its unit, as in \"20 mm\"." : "A rule of kind 'statement' takes no 'limit'.");
            return (id, null, null);
        }

        Rule rule = new Rule(id, title, kind.Value, limit, severity.Value, basis, remedy).WithValidity(validity);
        if (RuleSanity.Impossible(rule) is { } impossible)
        {
            faults.Add(node.Members["limit"], impossible);
            return (id, null, null);
        }

        return (id, rule, approval);
    }

    /// <summary>Writes a rule: whole, or what differs from the rule of the parent set.</summary>
    internal static void Write(DocumentWriter writer, Rule rule, Rule? inherited, RuleApproval? approval)
    {
        writer.Open();
        writer.Text("id", rule.Id);
        if (inherited is null && !RuleSet.Default.TryGet(rule.Id, out _))
        {
            writer.Flag("own");
        }

        WriteIf(writer, "title", rule.Title, inherited?.Title);
        WriteIf(writer, "kind", Words.Of(Words.Kinds, rule.Kind), inherited is null ? null : Words.Of(Words.Kinds, inherited.Kind));
        bool newLimit = rule.Limit is { } && rule.Limit != inherited?.Limit;
        if (newLimit)
        {
            writer.Measure("limit", rule.Limit!.Value);
        }

        WriteIf(writer, "severity", Words.Of(Words.Severities, rule.Severity), inherited is null ? null : Words.Of(Words.Severities, inherited.Severity));

        // A reader wants the basis beside every number and severity that differs, so it is written even where it is the same.
        if (inherited is null || newLimit || rule.Severity != inherited.Severity || rule.Basis != inherited.Basis)
        {
            BasisReader.Write(writer, "basis", rule.Basis);
        }

        WriteIf(writer, "remedy", rule.Remedy, inherited?.Remedy);
        if (rule.Validity != inherited?.Validity)
        {
            Write(writer, rule.Validity);
        }

        if (approval is not null)
        {
            writer.Open("approved");
            writer.Text("by", approval.Person);
            writer.Day("on", approval.Day);
            writer.Close();
        }

        writer.Close();
    }

    private static void Write(DocumentWriter writer, ValidityPeriod? validity)
    {
        if (validity is null)
        {
            writer.Text("validity", Always);
            return;
        }

        writer.Open("validity");
        if (validity.From is { } from)
        {
            writer.Day("from", from);
        }

        if (validity.Until is { } until)
        {
            writer.Day("until", until);
        }

        writer.Close();
    }

    private static void WriteIf(DocumentWriter writer, string name, string text, string? inherited)
    {
        if (text != inherited)
        {
            writer.Text(name, text);
        }
    }

    // A slip in a name must not make a rule that nothing evaluates: whoever means a rule of his own says so, once. A set
    // that is based on his has it from him.
    private static bool Known(ObjectReader reader, string? id, Rule? inherited, RuleSet? parent, FaultList faults)
    {
        bool own = reader.Flag("own");
        if (id is null || own != RuleSet.Default.TryGet(id, out _) || (!own && inherited is not null))
        {
            return id is not null;
        }

        faults.Add(reader.Node.Members["id"], own
            ? $"'{id}' is a rule of the library; 'own' is for rules that it does not know."
            : $"The library knows no rule '{DocumentTree.Short(id)}'.{NearestName.Hint(id, Ids(parent))} For a rule of the team's own write \"own\": true.");
        return false;
    }

    private static string[] Ids(RuleSet? parent) =>
        [.. RuleSet.Default.Rules.Concat(parent?.Rules ?? []).Select(static rule => rule.Id).Distinct(StringComparer.Ordinal)];

    private static void Need(ObjectReader reader, string name, FaultList faults)
    {
        if (!reader.Has(name))
        {
            faults.Add(reader.Node, $"'{name}' is missing: a rule that the parent set does not have needs it.");
        }
    }

    // A rule that the library knows keeps its kind and its kind of quantity; a number or severity that is stated says on what it rests.
    private static void Restates(ObjectReader reader, Rule inherited, RuleKind? kind, Measure? limit, FaultList faults)
    {
        if (kind is { } stated && stated != inherited.Kind)
        {
            faults.Add(reader.Node.Members["kind"], $"'{inherited.Id}' is of kind '{Words.Of(Words.Kinds, inherited.Kind)}' in the parent set and stays so.");
        }

        if (limit is { } number && inherited.Limit is { } old && number.Key.Unit != old.Key.Unit)
        {
            faults.Add(reader.Node.Members["limit"], $"'{MeasureText.Exact(number)}' does not measure what '{inherited.Id}' limits: expected a unit such as {(old.Unit == TradeUnit.One ? "none" : TradeUnits.Symbol(old.Unit))}, as in '{MeasureText.Exact(old)}'; {TradeUnits.ThatDo(old.Unit)}.");
        }

        if ((reader.Has("limit") || reader.Has("severity")) && !reader.Has("basis"))
        {
            faults.Add(reader.Node, $"'basis' is missing: say on what the limit or severity of '{inherited.Id}' rests.");
        }
    }

    private static ValidityPeriod? Validity(DocumentNode node, FaultList faults)
    {
        if (node.Kind == JsonValueKind.String)
        {
            if (node.Text != Always)
            {
                faults.Add(node, $"'{DocumentTree.Short(node.Text)}' is no period. Expected an object with 'from' and 'until', or '{Always}'.");
            }

            return null;
        }

        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return null;
        }

        int before = faults.Count;
        DateOnly? from = reader.OptionalDay("from");
        DateOnly? until = reader.OptionalDay("until");
        reader.Close();
        if (faults.Count > before)
        {
            return null;
        }

        if (from is null && until is null)
        {
            faults.Add(node, "Expected 'from', 'until' or both.");
            return null;
        }

        if (from > until)
        {
            faults.Add(node, "'from' is after 'until'.");
            return null;
        }

        return new ValidityPeriod(from, until);
    }

    private static RuleApproval? Approval(DocumentNode node, string id, FaultList faults)
    {
        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return null;
        }

        string? person = reader.Text("by", "who approved the rule");
        DateOnly? day = reader.Day("on", "the day of approval");
        reader.Close();
        return person is null || day is null ? null : new RuleApproval(id, person, day.Value);
    }
}
