using System.Text.Json;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Reads a rule set document strictly and tells all its faults at once.</summary>
internal sealed class RuleSetReader
{
    internal const string Kind = "rule set";

    private readonly FaultList faults;
    private readonly Dictionary<string, DocumentNode> places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Rule> stated = new(StringComparer.Ordinal);
    private readonly List<Rule> inOrder = [];
    private readonly List<RuleApproval> approvals = [];

    private RuleSetReader(FaultList faults) => this.faults = faults;

    internal static RuleSetDocument Read(ReadOnlyMemory<byte> utf8, IReadOnlyList<RuleSet> parents, DocumentLimits limits)
    {
        FaultList faults = DocumentStart.Tree(utf8, Kind, limits, out DocumentNode root);
        return new RuleSetReader(faults).Read(root, parents);
    }

    /// <summary>Reads a rule set that stands within another document. It throws with all faults there are by then, so it is read last.</summary>
    internal static RuleSetDocument Read(DocumentNode node, IReadOnlyList<RuleSet> parents, FaultList faults) => new RuleSetReader(faults).Read(node, parents);

    private RuleSetDocument Read(DocumentNode root, IReadOnlyList<RuleSet> parents)
    {
        if (ObjectReader.Open(root, this.faults) is not { } reader || !DocumentHeader.Read(reader, Kind, RuleSetDocument.SchemaVersion, this.faults))
        {
            throw this.faults.Exception();
        }

        string? name = reader.Text("name", "the name of the set");
        string? version = reader.Text("version", "the version of the set");
        DocumentNode? basedOn = reader.Optional("basedOn");
        RuleSet? parent = basedOn is null ? null : ParentReader.Read(basedOn, parents, this.faults);

        // What a set that states only what differs leaves out cannot be told from what it forgets while its parent is unknown.
        IReadOnlyList<DocumentNode> items = reader.Items("rules");
        if (basedOn is null || parent is not null)
        {
            this.Rules(items, parent);
        }

        IReadOnlyList<(Waiver Waiver, DocumentNode Node)> waivers = WaiverReader.Read(reader.Items("waivers"), this.faults);
        IReadOnlyList<VerificationCase> cases = CaseReader.Read(reader.Items("cases"), this.faults);
        reader.Close();
        if (basedOn is not null && parent is null)
        {
            throw this.faults.Exception();
        }

        // Made even from a file with faults, so that what only the whole set shows is told with the rest.
        var rules = new RuleSet(name ?? "?", version ?? "?", [
            .. (parent?.Rules ?? []).Where(rule => !this.stated.ContainsKey(rule.Id)), .. this.inOrder]);
        if (parent is not null && RuleSetContents.SameNameOtherRules(rules, parent) is { } confused)
        {
            this.faults.Add(root.Members.GetValueOrDefault("version") ?? root, confused);
        }

        this.Complete(parent, root);
        this.Whole(rules, waivers, root);
        this.faults.ThrowIfAny();
        return new RuleSetDocument(rules, parent, this.approvals, waivers.Select(static waiver => waiver.Waiver), cases);
    }

    private void Rules(IReadOnlyList<DocumentNode> items, RuleSet? parent)
    {
        foreach (DocumentNode item in items)
        {
            // What is wrong with the second of two is no matter: it is held against neither parent nor library.
            if (item.Members.GetValueOrDefault("id") is { Kind: JsonValueKind.String } name && !string.IsNullOrWhiteSpace(name.Text) && !this.places.TryAdd(name.Text, item))
            {
                this.faults.Add(name, $"Rule '{DocumentTree.Short(name.Text)}' stands twice in the document.");
                continue;
            }

            (_, Rule? rule, RuleApproval? approval) = RuleReader.Read(item, parent, this.faults);

            if (rule is not null)
            {
                this.stated.Add(rule.Id, rule);
                this.inOrder.Add(rule);
            }

            if (approval is not null)
            {
                this.approvals.Add(approval);
            }
        }
    }

    // An estimate asks for every rule of the library: a set that has no parent to take it from must state it.
    private void Complete(RuleSet? parent, DocumentNode root)
    {
        string[] missing = [.. RuleSet.Default.Rules.Select(static rule => rule.Id)
            .Where(id => !this.places.ContainsKey(id) && !(parent?.TryGet(id, out _) ?? false))];
        if (missing.Length > 0)
        {
            string more = missing.Length > 5 ? $" and {missing.Length - 5} more" : string.Empty;
            this.faults.Add(root, $"The set lacks {string.Join(", ", missing.Take(5).Select(static id => $"'{id}'"))}{more}, which the library evaluates. State them, or base the set on one that has them.");
        }
    }

    // What only the whole set shows: limits that contradict each other, waivers of rules that it does not have.
    private void Whole(RuleSet rules, IReadOnlyList<(Waiver Waiver, DocumentNode Node)> waivers, DocumentNode root)
    {
        foreach ((Rule lower, Rule upper) in RuleSanity.Contradictions(rules))
        {
            DocumentNode place = this.places.GetValueOrDefault(lower.Id) ?? this.places.GetValueOrDefault(upper.Id) ?? root;
            this.faults.Add(place, RuleSetContents.Contradiction(lower, upper));
        }

        foreach ((Waiver waiver, DocumentNode node) in waivers)
        {
            if (!rules.TryGet(waiver.RuleId, out _) && !this.places.ContainsKey(waiver.RuleId))
            {
                this.faults.Add(node.Members["rule"], $"The set has no rule '{DocumentTree.Short(waiver.RuleId)}'.{NearestName.Hint(waiver.RuleId, [.. rules.Rules.Select(static rule => rule.Id)])}");
            }
        }
    }
}
