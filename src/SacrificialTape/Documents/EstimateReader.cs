using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Reads an estimate strictly and tells all its faults at once.</summary>
internal static class EstimateReader
{
    internal const string Kind = "estimate";

    internal static EstimateDocument Read(ReadOnlyMemory<byte> utf8, IReadOnlyList<RuleSet> known, DocumentForms forms, ReadingLimits limits)
    {
        ReadOnlyMemory<byte> text = utf8.Span.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        var faults = new FaultList(text, Kind, limits.Faults);
        DocumentNode root = DocumentTree.Read(text, limits, faults);
        if (ObjectReader.Open(root, faults) is not { } members || !DocumentHeader.Read(members, Kind, EstimateDocument.Schema, faults))
        {
            throw faults.Exception();
        }

        var reader = new FormReader(members, new ReadingContext(faults, forms, limits.Steps));
        string library = reader.Text("library");
        DateOnly? day = members.Day("on", "the day of the estimate");
        StatedResults results = reader.Object("results", StatedResultsForm.Read);
        ValueList<Waiver> waivers = new(WaiverReader.Read(members.Items("waivers"), faults).Select(static pair => pair.Waiver));
        ValueList<LabourWork> work = reader.List("work", LabourWorkForm.Read);
        DocumentNode? jobNode = members.Required("job", "the job that was worked out");
        members.Close();
        JobDocument? job = jobNode is null ? null : JobReader.Read(jobNode, known, new ReadingContext(faults, forms, limits.Steps, jobNode.Path));
        if (job is not null && work.Count > 0 && job.Prices is null)
        {
            faults.Add(root.Members["work"], "Work is stated, but the job has no prices.");
        }

        Once(root, "lines", "tag", "tag", faults);
        Once(root, "stocks", "name", "stock", faults);
        faults.ThrowIfAny();
        return new EstimateDocument(job!, day!.Value, library, work, waivers, results);
    }

    // A result is found by its tag or name: one that stands twice says two things.
    private static void Once(DocumentNode root, string list, string member, string what, FaultList faults)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        IReadOnlyList<DocumentNode> items = root.Members.GetValueOrDefault("results")?.Members.GetValueOrDefault(list)?.Items ?? DocumentNode.NoItems;
        foreach (DocumentNode item in items)
        {
            if (item.Members.TryGetValue(member, out DocumentNode? name) && !names.Add(name.Text))
            {
                faults.Add(name, $"The {what} '{DocumentTree.Short(name.Text)}' stands twice among the results.");
            }
        }
    }
}
