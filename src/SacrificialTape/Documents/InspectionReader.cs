using System.Text.Json;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>Reads an inspection strictly and tells all its faults at once.</summary>
internal static class InspectionReader
{
    internal const string Kind = "inspection";

    internal static InspectionDocument Read(ReadOnlyMemory<byte> utf8, ReadingLimits limits)
    {
        ReadOnlyMemory<byte> text = utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        var faults = new FaultList(text, Kind, limits.Faults);
        DocumentNode root = DocumentTree.Read(text, limits, faults);
        if (ObjectReader.Open(root, faults) is not { } members || !DocumentHeader.Read(members, Kind, InspectionDocument.Schema, faults))
        {
            throw faults.Exception();
        }

        var reader = new FormReader(members, new ReadingContext(faults, DocumentForms.Library, limits.Steps));
        string name = reader.Text("name");
        DocumentNode? list = members.Required("sets", "at least one set of readings");
        ValueList<ReadingSet> sets = list is null ? [] : reader.List("sets", ReadingSetForm.Read);
        var places = new HashSet<string>(StringComparer.Ordinal);
        foreach (DocumentNode item in list?.Items ?? DocumentNode.NoItems)
        {
            if (item.Members.TryGetValue("place", out DocumentNode? place) && !string.IsNullOrWhiteSpace(place.Text) && !places.Add(place.Text))
            {
                faults.Add(place, $"The place '{DocumentTree.Short(place.Text)}' stands twice.");
            }
        }

        if (list is { Kind: JsonValueKind.Array, Items.Count: 0 })
        {
            faults.Add(list, "An inspection has at least one set of readings.");
        }

        return reader.Make(() => new InspectionDocument(name, sets, reader.Context.Given)) ?? throw faults.Exception();
    }
}
