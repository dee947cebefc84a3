namespace SacrificialTape.Documents;

/// <summary>Writes an inspection.</summary>
internal static class InspectionWriter
{
    internal static string Write(InspectionDocument document)
    {
        using var json = new DocumentWriter();
        var writer = new FormWriter(json, new WritingContext(DocumentForms.Library, [], document.Given), "$");
        json.Open();
        DocumentHeader.Write(json, InspectionReader.Kind, InspectionDocument.SchemaVersion);
        writer.Text("name", document.Name);
        writer.List("sets", document.Sets, ReadingSetForm.Write, null, static set => set.Place);
        json.Close();
        return json.Finish();
    }
}
