using SacrificialTape.Costing;
using SacrificialTape.Quantities;
using SacrificialTape.Wrapping;
using UnitsNet;

namespace SacrificialTape.Documents;

/// <summary>How work that is priced is read and written.</summary>
internal static class LabourWorkForm
{
    internal static LabourWork? Read(FormReader reader)
    {
        StripPurpose lay = reader.Word("lay", JobWords.Purposes);
        ApplicationMethod method = reader.Word("method", JobWords.Methods);
        string surface = reader.Text("surface");
        Area area = reader.Area("area");
        double strip = reader.Number("strip", TradeUnit.Meter);
        int pieces = reader.Count("pieces");
        return reader.Make(() => new LabourWork(new LabourKind(lay, method, surface), area, Length.FromMeters(strip), pieces));
    }

    internal static void Write(FormWriter writer, LabourWork work)
    {
        writer.Word("lay", work.Kind.Lay, JobWords.Purposes);
        writer.Word("method", work.Kind.Method, JobWords.Methods);
        writer.Text("surface", work.Kind.Surface);
        writer.Area("area", work.Area);
        writer.Number("strip", work.StripMeters, TradeUnit.Meter);
        writer.Count("pieces", checked((int)work.Pieces));
    }
}
