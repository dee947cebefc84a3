namespace SacrificialTape.Documents;

/// <summary>Writes a job.</summary>
internal static class JobWriter
{
    internal static string Write(JobDocument document, DocumentForms forms)
    {
        using var json = new DocumentWriter();
        json.Open();
        WriteMembers(json, document, forms);
        json.Close();
        return json.Finish();
    }

    /// <summary>The members of a job, which may stand within another document.</summary>
    internal static void WriteMembers(DocumentWriter json, JobDocument document, DocumentForms forms)
    {
        if (document.Job.OwnRules.FirstOrDefault(rule => !forms.OwnRules.Contains(rule)) is { } lost)
        {
            throw new ArgumentException(
                $"The code that judges by the rule '{lost.RuleId}' cannot stand in a file. Hand it in with the forms, here and when the file is read.", nameof(document));
        }

        var writer = new FormWriter(json, new WritingContext(forms, document.Stocks, document.Given), "$");
        DocumentHeader.Write(json, JobReader.Kind, JobDocument.SchemaVersion);
        writer.Text("name", document.Job.Name);
        RuleReference.Write(json, document.Job.Rules, document.RulesDocument);
        writer.Object("takeOff", document.Job.TakeOff, TakeOffForm.Write);
        writer.List("stocks", document.Stocks, WriteStock, null, static stock => stock.Name);
        writer.List("lines", document.Job.Lines, SurveyLineForm.Write, null, static line => line.Tag);
        writer.List("notes", document.Notes, JobNoteForm.Write);
        if (document.Prices is { } prices)
        {
            writer.Object("prices", prices, PricesForm.Write);
        }
    }

    private static void WriteStock(FormWriter writer, NamedStock stock)
    {
        writer.Text("name", stock.Name);
        StockForm.Write(writer, stock.Stock);
    }
}
