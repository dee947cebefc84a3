using System.Text.Json;
using SacrificialTape.Costing;
using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.TakeOff;
using SacrificialTape.Tapes;

namespace SacrificialTape.Documents;

/// <summary>Reads a job strictly and tells all its faults at once.</summary>
internal static class JobReader
{
    internal const string Kind = "job";

    internal static JobDocument Read(ReadOnlyMemory<byte> utf8, IReadOnlyList<RuleSet> known, DocumentForms forms, DocumentLimits limits)
    {
        FaultList faults = DocumentStart.Tree(utf8, Kind, limits, out DocumentNode root);
        return Read(root, known, new ReadingContext(faults, forms, limits.Steps));
    }

    /// <summary>Reads a job that may stand within another document. It throws with all faults there are by then, so it is read last.</summary>
    internal static JobDocument Read(DocumentNode root, IReadOnlyList<RuleSet> known, ReadingContext context)
    {
        FaultList faults = context.Faults;
        if (ObjectReader.Open(root, faults) is not { } members || !DocumentHeader.Read(members, Kind, JobDocument.SchemaVersion, faults, out int version))
        {
            throw faults.Exception();
        }

        var reader = new FormReader(members, context);
        return version switch
        {
            // An older version keeps its reader here when a newer one comes.
            1 => ReadVersion1(reader, known),
            _ => throw new InvalidOperationException("The header lets no other version through."),
        };
    }

    private static JobDocument ReadVersion1(FormReader reader, IReadOnlyList<RuleSet> known)
    {
        FaultList faults = reader.Context.Faults;
        string name = reader.Text("name");
        ValueList<NamedStock> stocks = reader.List("stocks", ReadStock);
        TakeOffChoices takeOff = reader.Object("takeOff", TakeOffForm.Read);
        ValueList<SurveyLine> lines = Lines(reader);
        ValueList<JobNote> notes = reader.List("notes", JobNoteForm.Read);
        Notes(reader);
        CostPrices? prices = reader.OptionalObject("prices", PricesForm.Read);
        DocumentNode? rulesNode = reader.Members.Required("rules", "by which rules it is judged");
        reader.Members.Close();
        (RuleSet? rules, RuleSetDocument? stated) = rulesNode is null ? (null, null) : RuleReference.Read(rulesNode, known, faults);
        faults.ThrowIfAny();
        var own = new ValueList<IOwnRule>(reader.Context.Forms.OwnRules.Where(rule => rules!.TryGet(rule.RuleId, out _)));
        var job = new Job(name, lines, takeOff, rules, own);
        if (prices is not null)
        {
            Priced(job, prices, stocks, reader);
        }

        faults.ThrowIfAny();
        return new JobDocument(job, prices, notes, stocks, stated is not null, reader.Context.Given, stated);
    }

    private static void Priced(Job job, CostPrices prices, ValueList<NamedStock> stocks, FormReader reader)
    {
        DocumentNode node = reader.Node.Members["prices"];
        foreach (UnpricedStock one in JobStocks.Unpriced(job, prices))
        {
            string name = stocks.FirstOrDefault(stock => stock.Stock.Equals(one.Stock))?.Name ?? one.Stock.ToString();
            reader.Context.Faults.Add(
                node.Members.GetValueOrDefault("rolls") ?? node, $"The stock '{DocumentTree.Short(name)}', which line '{DocumentTree.Short(one.Tag)}' uses, has no price. State one, or leave all prices out.");
        }
    }

    private static NamedStock? ReadStock(FormReader reader)
    {
        string name = reader.Text("name");
        reader.Context.Enter(reader.Node, "stocks", name);
        StripStock? stock = StockForm.Read(reader);
        reader.Context.Leave();
        if (stock is null)
        {
            return null;
        }

        if (!reader.Context.Name(name, stock))
        {
            reader.Context.Faults.Add(reader.Node.Members["name"], $"The stock '{DocumentTree.Short(name)}' stands twice.");
        }

        return new NamedStock(name, stock);
    }

    private static ValueList<SurveyLine> Lines(FormReader reader)
    {
        if (reader.Members.Required("lines", "at least one survey line") is not { } list)
        {
            return [];
        }

        FaultList faults = reader.Context.Faults;
        ValueList<SurveyLine> lines = reader.List("lines", SurveyLineForm.Read);
        if (list.Kind == JsonValueKind.Array && list.Items.Count == 0)
        {
            faults.Add(list, "A job needs at least one survey line.");
        }

        DocumentStart.EachOnce(list, "tag", faults, static tag => $"The tag '{tag}' stands twice in the survey.");
        return lines;
    }

    // Held against all tags of the file, also those of lines with faults.
    private static void Notes(FormReader reader)
    {
        var tags = new HashSet<string>(Items(reader, "lines").Select(static item => item.Members.GetValueOrDefault("tag")?.Text).OfType<string>(), StringComparer.Ordinal);
        foreach (DocumentNode item in Items(reader, "notes"))
        {
            if (item.Members.TryGetValue("line", out DocumentNode? line) && !string.IsNullOrWhiteSpace(line.Text) && !tags.Contains(line.Text))
            {
                reader.Context.Faults.Add(line, $"The job has no line '{DocumentTree.Short(line.Text)}'.");
            }
        }
    }

    // Without a fault: that a list is none was told when it was read.
    private static IReadOnlyList<DocumentNode> Items(FormReader reader, string name) => reader.Node.Members.GetValueOrDefault(name)?.Items ?? DocumentNode.NoItems;
}
