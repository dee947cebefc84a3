using SacrificialTape.Inspection;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Writes a record of a job as built.</summary>
internal static class AsBuiltWriter
{
    internal static string Write(AsBuiltDocument document)
    {
        AsBuiltRecord record = document.Record;
        RuleSet rules = record.Plan.Rules;
        using var json = new DocumentWriter();
        var writer = new FormWriter(json, new WritingContext(DocumentForms.Library, [], document.Given), "$");
        json.Open();
        DocumentHeader.Write(json, AsBuiltReader.Kind, AsBuiltDocument.SchemaVersion);
        writer.Text("name", document.Name);
        RuleReference.Write(json, rules, document.RulesDocument);
        writer.List("plan", record.Plan.Lines, PlanLineForm.Write, null, static line => line.Tag);
        if (record.Plan.ThicknessSampling is { } scheme)
        {
            writer.Word("thickness", scheme, InspectionWords.Schemes);
        }

        writer.List("lines", record.Lines, (inner, line) => AsBuiltLineForm.Write(inner, line, rules), null, static line => line.Tag);
        writer.List("signatures", record.Signatures, WriteSignature);
        json.Close();
        return json.Finish();
    }

    private static void WriteSignature(FormWriter writer, AsBuiltSignature signature)
    {
        writer.Text("rule", signature.Finding.Rule.Id);
        writer.Text("subject", signature.Finding.Subject);
        if (signature.Finding.Measured is { } measured)
        {
            writer.Raw(json => json.Measure("measured", measured));
        }

        writer.Text("by", signature.By);
        writer.Time("at", signature.At);
        writer.Text("word", signature.Word);
    }
}
