using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Reads an estimate strictly and tells all its faults at once.</summary>
internal static class EstimateReader
{
    internal const string Kind = "estimate";

    internal static EstimateDocument Read(ReadOnlyMemory<byte> utf8, IReadOnlyList<RuleSet> known, DocumentForms forms, DocumentLimits limits)
    {
        FormReader reader = DocumentStart.Open(utf8, Kind, EstimateDocument.SchemaVersion, forms, limits);
        FaultList faults = reader.Context.Faults;
        ObjectReader members = reader.Members;
        string library = reader.Text("library");
        DateOnly? day = members.Day("on", "the day of the estimate");
        StatedResults results = reader.Object("results", StatedResultsForm.Read);
        ValueList<Waiver> waivers = new(WaiverReader.Read(members.Items("waivers"), faults).Select(static pair => pair.Waiver));
        ValueList<LabourWork> work = reader.List("work", LabourWorkForm.Read);
        DocumentNode? stated = members.Optional("results");
        DocumentStart.EachOnce(stated?.Members.GetValueOrDefault("lines"), "tag", faults, static tag => $"The tag '{tag}' stands twice among the results.");
        DocumentStart.EachOnce(stated?.Members.GetValueOrDefault("stocks"), "name", faults, static name => $"The stock '{name}' stands twice among the results.");
        DocumentNode? jobNode = members.Required("job", "the job that was worked out");
        members.Close();

        // Last, since it throws with all faults there are by then.
        JobDocument? job = jobNode is null ? null : JobReader.Read(jobNode, known, new ReadingContext(faults, forms, limits.Steps, jobNode.Path));
        if (job is not null && work.Count > 0 && job.Prices is null)
        {
            faults.Add(reader.Node.Members["work"], "Work is stated, but the job has no prices.");
        }

        if (job?.Prices is { } prices)
        {
            Norms(work, prices, reader);
        }

        faults.ThrowIfAny();
        return new EstimateDocument(job!, day!.Value, library, work, waivers, results);
    }

    // Where an item could not be read the list is shorter than the file, but then this is not reached.
    private static void Norms(ValueList<LabourWork> work, CostPrices prices, FormReader reader)
    {
        for (int i = 0; i < work.Count; i++)
        {
            if (!prices.Norms.Any(norm => norm.Kind == work[i].Kind))
            {
                reader.Context.Faults.Add(reader.Node.Members["work"].Items[i], $"No norm of the job's prices says how long this work takes: {work[i].Kind}.");
            }
        }
    }
}
