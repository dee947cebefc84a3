using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>By which rules a document was made: named with a fingerprint, or stated whole within it.</summary>
internal static class RuleReference
{
    private const string Word = "stated";

    /// <summary>The rules; null, with faults, where they cannot be read. A set that is stated is read last of all.</summary>
    internal static (RuleSet? Rules, RuleSetDocument? Stated) Read(DocumentNode node, IReadOnlyList<RuleSet> known, FaultList faults)
    {
        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return (null, null);
        }

        if (reader.Optional(Word) is { } whole)
        {
            reader.Close();
            RuleSetDocument stated = RuleSetReader.Read(whole, known, faults);
            return (stated.Rules, stated);
        }

        string? name = reader.Text("name", "the name of the rule set");
        string? version = reader.Text("version", "the version of the rule set");
        string? text = reader.Text("fingerprint", "the fingerprint of the rule set");
        reader.Close();
        Fingerprint fingerprint = default;
        if (text is not null && !Fingerprint.TryParse(text, null, out fingerprint))
        {
            faults.Add(node.Members["fingerprint"], $"'{DocumentTree.Short(text)}' is no fingerprint. Expected 'sha256:' and 64 hexadecimal digits in lower case.");
            return (null, null);
        }

        return name is null || version is null || text is null ? (null, null) : (Find(node, name, version, fingerprint, known, faults), null);
    }

    /// <summary>
    /// What a file is to state: the document that was given, or every rule of the set; null where the set is only named. It
    /// must hold every rule of the library, or it could not be read back.
    /// </summary>
    internal static RuleSetDocument? Stated(RuleSet rules, bool stated, RuleSetDocument? document, string statesRules, string rulesDocument)
    {
        if (document is not null && !document.Rules.Equals(rules))
        {
            throw new ArgumentException($"The rules to be stated are those of '{document.Rules}', but judged is by '{rules}'.", rulesDocument);
        }

        if (document is null && !stated)
        {
            return null;
        }

        return RuleSet.Default.Rules.FirstOrDefault(rule => !rules.TryGet(rule.Id, out _)) is { } missing
            ? throw new ArgumentException($"The rule set lacks '{missing.Id}': stated in a file it could not be read back.", document is null ? statesRules : rulesDocument)
            : document ?? new RuleSetDocument(rules);
    }

    internal static void Write(DocumentWriter writer, RuleSet rules, RuleSetDocument? stated)
    {
        writer.Open("rules");
        if (stated is not null)
        {
            writer.Open(Word);
            RuleSetWriter.WriteMembers(writer, stated);
            writer.Close();
        }
        else
        {
            writer.Text("name", rules.Name);
            writer.Text("version", rules.Version);
            writer.Text("fingerprint", rules.Fingerprint.ToString());
        }

        writer.Close();
    }

    private static RuleSet? Find(
        DocumentNode node, string name, string version, Fingerprint fingerprint, IReadOnlyList<RuleSet> known, FaultList faults)
    {
        RuleSet[] alike = [.. known.Where(set => set.Name == name && set.Version == version)];
        if (alike.FirstOrDefault(set => set.Fingerprint == fingerprint) is { } same)
        {
            return same;
        }

        if (alike.Length == 0)
        {
            faults.Add(node, $"The rule set '{DocumentTree.Short(name)}', version '{DocumentTree.Short(version)}', is not at hand. At hand: {string.Join("; ", known)}.");
        }
        else
        {
            faults.Add(node.Members["fingerprint"], $"The rule set at hand has another fingerprint, {alike[0].Fingerprint}: it is not the one this document was made by. Compare the two before you go on.");
        }

        return null;
    }
}
