using System.Text.Json;
using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Reads a record of a job as built strictly and tells all its faults at once.</summary>
/// <remarks>
/// Findings are not in the file: they are made again from what was read off. A signature names its finding, and one whose
/// finding does not arise is a fault: the record would not be the one that was signed. Faults of rules that are stated
/// within it are told before all others, since what was read off is judged by them.
/// </remarks>
internal static class AsBuiltReader
{
    internal const string Kind = "as-built record";

    internal static AsBuiltDocument Read(ReadOnlyMemory<byte> utf8, IReadOnlyList<RuleSet> known, DocumentLimits limits)
    {
        FormReader reader = DocumentStart.Open(utf8, Kind, AsBuiltDocument.SchemaVersion, DocumentForms.Library, limits);
        FaultList faults = reader.Context.Faults;
        ObjectReader members = reader.Members;
        string name = reader.Text("name");

        // The rules come first here: what was read off is judged by them.
        DocumentNode? rulesNode = members.Required("rules", "by which rules it is judged");
        (RuleSet? rules, RuleSetDocument? stated) = rulesNode is null ? (null, null) : RuleReference.Read(rulesNode, known, faults);
        ValueList<InspectionPlanLine> planned = Planned(reader);
        SamplingScheme? scheme = members.OptionalWord("thickness", InspectionWords.Schemes);
        ValueList<AsBuiltLine> lines = reader.List("lines", inner => AsBuiltLineForm.Read(inner, rules ?? RuleSet.Default));
        Lines(reader);
        IReadOnlyList<DocumentNode> signatures = members.Items("signatures");

        // Every line is held against the plan, and every signature against every finding.
        reader.CountSteps((planned.Count + signatures.Count) * (double)(planned.Count + lines.Sum(static line => line.Readings.Count + 1)));
        members.Close();
        faults.ThrowIfAny();
        AsBuiltRecord? record = reader.Make(() => new AsBuiltRecord(new InspectionPlan(planned, rules!, scheme), lines));
        foreach (DocumentNode item in signatures)
        {
            record = record is null ? null : Sign(record, item, faults) ?? record;
        }

        faults.ThrowIfAny();
        return new AsBuiltDocument(name, record!, stated is not null, reader.Context.Given, stated);
    }

    private static ValueList<InspectionPlanLine> Planned(FormReader reader)
    {
        if (reader.Members.Required("plan", "the lines of the plan") is not { } list)
        {
            return [];
        }

        DocumentStart.EachOnce(list, "name", reader.Context.Faults, static name => $"The plan has line '{name}' twice.");
        if (list is { Kind: JsonValueKind.Array, Items.Count: 0 })
        {
            reader.Context.Faults.Add(list, "A plan has at least one line.");
        }

        return reader.List("plan", PlanLineForm.Read);
    }

    // Held against all names of the file, also those of lines with faults.
    private static void Lines(FormReader reader)
    {
        if (reader.Node.Members.GetValueOrDefault("lines") is not { } list)
        {
            return;
        }

        DocumentStart.EachOnce(list, "name", reader.Context.Faults, static name => $"The record has line '{name}' twice.");
        var names = new HashSet<string>(
            (reader.Node.Members.GetValueOrDefault("plan")?.Items ?? DocumentNode.NoItems).Select(static item => item.Members.GetValueOrDefault("name")?.Text).OfType<string>(),
            StringComparer.Ordinal);
        foreach (DocumentNode item in list.Items)
        {
            if (item.Members.TryGetValue("name", out DocumentNode? name) && !string.IsNullOrWhiteSpace(name.Text) && !names.Contains(name.Text))
            {
                reader.Context.Faults.Add(name, $"Line '{DocumentTree.Short(name.Text)}' is not in the plan.");
            }
        }
    }

    private static AsBuiltRecord? Sign(AsBuiltRecord record, DocumentNode node, FaultList faults)
    {
        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return null;
        }

        int before = faults.Count;
        string? rule = reader.Text("rule", "the rule of the finding that is signed");
        string? subject = reader.Text("subject", "the place as the finding names it");
        Measure? measured = reader.OptionalMeasure("measured");
        string? by = reader.Text("by", "who signed");
        DateTimeOffset? at = reader.Time("at", "when it was signed");
        string? word = reader.Text("word", "what was done, or why it may stay");
        reader.Close();
        if (faults.Count > before)
        {
            return null;
        }

        if (record.OpenFindings.FirstOrDefault(one => one.Rule.Id == rule && one.Subject == subject && Equals(one.Measured, measured)) is { } finding)
        {
            return record.Sign(finding, by!, at!.Value, word!);
        }

        faults.Add(node, $"The record has no open finding '[{DocumentTree.Short(rule!)}] {DocumentTree.Short(subject!)}'{(measured is { } value ? $" with {value}" : string.Empty)}. Was it signed under other rules, or has a reading changed?");
        return null;
    }
}
