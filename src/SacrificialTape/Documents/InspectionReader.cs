using System.Text.Json;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>Reads an inspection strictly and tells all its faults at once.</summary>
internal static class InspectionReader
{
    internal const string Kind = "inspection";

    internal static InspectionDocument Read(ReadOnlyMemory<byte> utf8, DocumentLimits limits)
    {
        FormReader reader = DocumentStart.Open(utf8, Kind, InspectionDocument.SchemaVersion, DocumentForms.Library, limits);
        FaultList faults = reader.Context.Faults;
        string name = reader.Text("name");
        DocumentNode? list = reader.Members.Required("sets", "at least one set of readings");
        ValueList<ReadingSet> sets = list is null ? [] : reader.List("sets", ReadingSetForm.Read);
        DocumentStart.EachOnce(list, "place", faults, static place => $"The place '{place}' stands twice.");
        if (list is { Kind: JsonValueKind.Array, Items.Count: 0 })
        {
            faults.Add(list, "An inspection has at least one set of readings.");
        }

        return reader.Make(() => new InspectionDocument(name, sets, reader.Context.Given)) ?? throw faults.Exception();
    }
}
