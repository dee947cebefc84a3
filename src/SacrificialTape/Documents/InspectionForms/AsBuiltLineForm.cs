using SacrificialTape.Inspection;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>How a line as built is read and written.</summary>
internal static class AsBuiltLineForm
{
    internal static AsBuiltLine? Read(FormReader reader, RuleSet rules)
    {
        string name = reader.Text("name");
        reader.Context.Enter(reader.Node, "lines", name);
        string laidBy = reader.Text("laidBy");
        DateTimeOffset laidAt = reader.Members.Time("laidAt", "when it was laid") ?? default;
        ValueList<TapeBatch> batches = reader.List("batches", TapeBatchForm.Read);
        ValueList<HoldPointReading> readings = reader.List("readings", inner => HoldPointReadingForm.Read(inner, rules));
        reader.Context.Leave();
        return reader.Make(() => new AsBuiltLine(name, laidBy, laidAt, batches, readings));
    }

    internal static void Write(FormWriter writer, AsBuiltLine line, RuleSet rules)
    {
        writer.Text("name", line.Tag);
        writer.Text("laidBy", line.LaidBy);
        writer.Time("laidAt", line.LaidAt);
        writer.List("batches", line.Batches, TapeBatchForm.Write);
        writer.List("readings", line.Readings, (inner, reading) => HoldPointReadingForm.Write(inner, reading, rules));
    }
}
