using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How a norm of labour is read and written.</summary>
internal static class LabourNormForm
{
    internal static LabourNorm? Read(FormReader reader)
    {
        StripPurpose lay = reader.Word("lay", JobWords.Purposes);
        ApplicationMethod method = reader.Word("method", JobWords.Methods);
        string surface = reader.Text("surface");
        LabourMeasure per = reader.Word("per", JobWords.LabourMeasures);
        double hours = reader.Number("time", TradeUnit.Hour);
        return reader.Make(() => new LabourNorm(new LabourKind(lay, method, surface), per, Duration.FromHours(hours)));
    }

    internal static void Write(FormWriter writer, LabourNorm norm)
    {
        writer.Word("lay", norm.Kind.Lay, JobWords.Purposes);
        writer.Word("method", norm.Kind.Method, JobWords.Methods);
        writer.Text("surface", norm.Kind.Surface);
        writer.Word("per", norm.Measure, JobWords.LabourMeasures);
        writer.Number("time", norm.HoursPerUnit, TradeUnit.Hour);
    }
}
