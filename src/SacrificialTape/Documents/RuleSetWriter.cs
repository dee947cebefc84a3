using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Writes a rule set document: whole, or what differs from the parent set.</summary>
internal static class RuleSetWriter
{
    internal static string Write(RuleSetDocument document)
    {
        using var writer = new DocumentWriter();
        writer.Open();
        WriteMembers(writer, document);
        writer.Close();
        return writer.Finish();
    }

    /// <summary>Writes the members of a rule set, also as a part of another document.</summary>
    internal static void WriteMembers(DocumentWriter writer, RuleSetDocument document)
    {
        DocumentHeader.Write(writer, RuleSetReader.Kind, RuleSetDocument.SchemaVersion);
        writer.Text("name", document.Rules.Name);
        writer.Text("version", document.Rules.Version);
        if (document.BasedOn is { } parent)
        {
            ParentReader.Write(writer, parent);
        }

        writer.OpenList("rules");
        Dictionary<string, RuleApproval> approvals = document.Approvals.ToDictionary(static approval => approval.RuleId, StringComparer.Ordinal);
        foreach (Rule rule in document.Rules.Rules)
        {
            Rule? inherited = document.BasedOn is { } set && set.TryGet(rule.Id, out Rule? known) ? known : null;
            RuleApproval? approval = approvals.GetValueOrDefault(rule.Id);
            if (rule != inherited || approval is not null)
            {
                RuleReader.Write(writer, rule, inherited, approval);
            }
        }

        writer.CloseList();
        WaiverReader.Write(writer, document.Waivers);
        CaseReader.Write(writer, document.Cases);
    }
}
