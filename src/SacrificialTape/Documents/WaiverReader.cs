using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>Reads and writes waivers.</summary>
internal static class WaiverReader
{
    internal static IReadOnlyList<(Waiver Waiver, DocumentNode Node)> Read(IReadOnlyList<DocumentNode> items, FaultList faults)
    {
        var read = new List<(Waiver Waiver, DocumentNode Node)>();
        foreach (DocumentNode item in items)
        {
            if (ObjectReader.Open(item, faults) is { } reader && Read(reader, faults) is { } waiver)
            {
                read.Add((waiver, item));
            }
        }

        return read;
    }

    internal static void Write(DocumentWriter writer, IReadOnlyCollection<Waiver> waivers)
    {
        if (waivers.Count == 0)
        {
            return;
        }

        writer.OpenList("waivers");
        foreach (Waiver waiver in waivers)
        {
            writer.Open();
            writer.Text("rule", waiver.RuleId);
            writer.Text("subject", waiver.Subject);
            writer.Text("reason", waiver.Reason);
            writer.Text("by", waiver.Person);
            writer.Day("on", waiver.Granted);
            if (waiver.Until is { } until)
            {
                writer.Day("until", until);
            }

            writer.Close();
        }

        writer.CloseList();
    }

    private static Waiver? Read(ObjectReader reader, FaultList faults)
    {
        int before = faults.Count;
        string? rule = reader.Text("rule", "the rule whose finding may stand");
        string? subject = reader.Text("subject", "the place as the finding names it");
        string? reason = reader.Text("reason", "why the finding may stand");
        string? person = reader.Text("by", "who answers for it");
        DateOnly? granted = reader.Day("on", "the day it was given");
        DateOnly? until = reader.OptionalDay("until");
        reader.Close();
        if (faults.Count > before)
        {
            return null;
        }

        if (until < granted)
        {
            faults.Add(reader.Node.Members["until"], "'until' is before 'on'.");
            return null;
        }

        return new Waiver(rule!, subject!, reason!, person!, granted!.Value, until);
    }
}
