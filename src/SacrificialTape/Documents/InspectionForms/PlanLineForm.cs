using SacrificialTape.Inspection;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>How a line of an inspection plan is read and written.</summary>
internal static class PlanLineForm
{
    internal static InspectionPlanLine? Read(FormReader reader)
    {
        string name = reader.Text("name");
        reader.Context.Enter(reader.Node, "plan", name);
        UnitsNet.Area area = reader.Area("area");
        bool paintStays = reader.Flag("paintStays");
        bool hasWelds = reader.Flag("hasWelds");
        int layers = reader.OptionalCount("layers", 1);
        reader.Context.Leave();
        return reader.Make(() => new InspectionPlanLine(name, area, paintStays, hasWelds, layers));
    }

    internal static void Write(FormWriter writer, InspectionPlanLine line)
    {
        writer.Text("name", line.Tag);
        writer.Number("area", line.AreaM2, TradeUnit.SquareMeter);
        writer.Flag("paintStays", line.PaintStays);
        writer.Flag("hasWelds", line.HasWelds);
        writer.Count("layers", line.Layers);
    }
}
