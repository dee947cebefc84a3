namespace SacrificialTape.Documents;

/// <summary>The beginning of reading any document: its bytes as a tree, and a header of the right kind that is not too new.</summary>
internal static class DocumentStart
{
    /// <summary>The root, ready to be read; throws where there is nothing that could be.</summary>
    internal static FormReader Open(ReadOnlyMemory<byte> utf8, string kind, int newest, DocumentForms forms, DocumentLimits limits)
    {
        FaultList faults = Tree(utf8, kind, limits, out DocumentNode root);
        return ObjectReader.Open(root, faults) is { } members && DocumentHeader.Read(members, kind, newest, faults)
            ? new FormReader(members, new ReadingContext(faults, forms, limits.Steps))
            : throw faults.Exception();
    }

    /// <summary>The tree alone; a byte order mark before it is passed over.</summary>
    internal static FaultList Tree(ReadOnlyMemory<byte> utf8, string kind, DocumentLimits limits, out DocumentNode root)
    {
        ReadOnlyMemory<byte> text = utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        var faults = new FaultList(text, kind, limits.Faults);
        root = DocumentTree.Read(text, limits, faults);
        return faults;
    }

    /// <summary>Tells every item of a list whose name stood before it. Held against all items, also those with faults.</summary>
    /// <param name="list">The list; null where there is none.</param>
    /// <param name="member">Which member names an item.</param>
    /// <param name="faults">Where to tell it.</param>
    /// <param name="said">What to say of a name that stands twice.</param>
    internal static void EachOnce(DocumentNode? list, string member, FaultList faults, Func<string, string> said)
    {
        IReadOnlyList<DocumentNode> items = list?.Items ?? DocumentNode.NoItems;
        var names = new HashSet<string>(items.Count, StringComparer.Ordinal);
        foreach (DocumentNode item in items)
        {
            if (item.Members.TryGetValue(member, out DocumentNode? name) && !string.IsNullOrWhiteSpace(name.Text) && !names.Add(name.Text))
            {
                faults.Add(name, said(DocumentTree.Short(name.Text)));
            }
        }
    }
}
