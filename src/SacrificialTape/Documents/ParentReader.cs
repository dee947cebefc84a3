using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Reads and writes which set another is based on, and finds it among those at hand.</summary>
internal static class ParentReader
{
    internal static RuleSet? Read(DocumentNode node, IReadOnlyList<RuleSet> parents, FaultList faults)
    {
        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return null;
        }

        string? name = reader.Text("name", "the name of the parent set");
        string? version = reader.Text("version", "the version of the parent set");
        string? text = reader.Text("fingerprint", "the fingerprint of the parent set");
        reader.Close();
        Fingerprint fingerprint = default;
        if (text is not null && !Fingerprint.TryParse(text, null, out fingerprint))
        {
            faults.Add(node.Members["fingerprint"], $"'{DocumentTree.Short(text)}' is no fingerprint. Expected 'sha256:' and 64 hexadecimal digits in lower case.");
            return null;
        }

        if (name is null || version is null || text is null)
        {
            return null;
        }

        if (parents.FirstOrDefault(set => set.Name == name && set.Version == version) is not { } parent)
        {
            faults.Add(node, $"The parent set '{DocumentTree.Short(name)}', version '{DocumentTree.Short(version)}', is not at hand. At hand: {string.Join("; ", parents)}.");
            return null;
        }

        if (parents.FirstOrDefault(set => set.Name == name && set.Version == version && set.Fingerprint == fingerprint) is { } same)
        {
            return same;
        }

        faults.Add(node.Members["fingerprint"], $"The parent set at hand has another fingerprint, {parent.Fingerprint}: it is not the one this set was made from. Compare the two before you go on.");
        return null;
    }

    internal static void Write(DocumentWriter writer, RuleSet parent)
    {
        writer.Open("basedOn");
        writer.Text("name", parent.Name);
        writer.Text("version", parent.Version);
        writer.Text("fingerprint", parent.Fingerprint.ToString());
        writer.Close();
    }
}
