namespace SacrificialTape.Documents;

/// <summary>Writes an estimate.</summary>
internal static class EstimateWriter
{
    internal static string Write(EstimateDocument document, DocumentForms forms)
    {
        using var json = new DocumentWriter();
        var writer = new FormWriter(json, new WritingContext(forms, [], []), "$");
        json.Open();
        DocumentHeader.Write(json, EstimateReader.Kind, EstimateDocument.SchemaVersion);
        writer.Text("library", document.Library);
        writer.Day("on", document.Day);
        writer.Object("results", document.Results, StatedResultsForm.Write);
        // Those of the stated rules stand with the rules.
        WaiverReader.Write(json, [.. document.Waivers.Except(document.Job.RulesDocument?.Waivers ?? [])]);
        writer.List("work", document.Work, LabourWorkForm.Write);
        json.Open("job");
        JobWriter.WriteMembers(json, document.Job, forms);
        json.Close();
        json.Close();
        return json.Finish();
    }
}
