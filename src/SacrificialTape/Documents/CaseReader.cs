using SacrificialTape.Provenance;
using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>Reads and writes verification cases.</summary>
internal static class CaseReader
{
    internal static IReadOnlyList<VerificationCase> Read(IReadOnlyList<DocumentNode> items, FaultList faults)
    {
        var read = new List<VerificationCase>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        foreach (DocumentNode item in items)
        {
            if (ObjectReader.Open(item, faults) is not { } reader || Read(reader, faults) is not { } one)
            {
                continue;
            }

            read.Add(one);
            if (!ids.Add(one.Id))
            {
                faults.Add(item.Members["id"], $"The case '{DocumentTree.Short(one.Id)}' stands twice.");
            }
        }

        return read;
    }

    internal static void Write(DocumentWriter writer, IReadOnlyCollection<VerificationCase> cases)
    {
        if (cases.Count == 0)
        {
            return;
        }

        writer.OpenList("cases");
        foreach (VerificationCase one in cases)
        {
            writer.Open();
            writer.Text("id", one.Id);
            writer.Text("calculation", one.Calculation);
            writer.Open("inputs");
            foreach (CaseValue value in one.Inputs)
            {
                writer.Measure(value.Name, value.Value);
            }

            writer.Close();
            writer.Measure("expected", one.Expected);
            writer.Measure("tolerance", one.Tolerance);
            BasisReader.Write(writer, "basis", one.Basis);
            writer.Close();
        }

        writer.CloseList();
    }

    private static VerificationCase? Read(ObjectReader reader, FaultList faults)
    {
        int before = faults.Count;
        string? id = reader.Text("id", "the name of the case");
        string? calculation = reader.Text("calculation", "the calculation that it calls, for instance 'spiral.angle'");
        IReadOnlyList<CaseValue> inputs = reader.Required("inputs", "what the calculation is given") is { } member ? Inputs(member, faults) : [];
        Measure? expected = reader.Measure("expected", "the answer, with its unit");
        Measure? tolerance = reader.Measure("tolerance", "by how much the library may differ, with its unit");
        Basis? basis = reader.Required("basis", "where the answer comes from") is { } rests ? BasisReader.Read(rests, faults) : null;
        reader.Close();
        if (faults.Count > before || expected is not { } answer || tolerance is not { } allowed)
        {
            return null;
        }

        // Of an answer and a tolerance that do not fit each other the calculation, where it is the library's, tells which is wrong.
        if (allowed.Key.Unit != answer.Key.Unit && CaseCalculations.All.FirstOrDefault(known => known.Id == calculation)?.RefuseAnswer(answer) is { } wrong)
        {
            faults.Add(reader.Node.Members["expected"], wrong);
            return null;
        }

        if (allowed.Key.Unit != answer.Key.Unit || allowed.Number < 0)
        {
            faults.Add(reader.Node.Members["tolerance"], $"'{MeasureText.Exact(allowed)}' must be zero or more and of the same kind as '{MeasureText.Exact(answer)}'.");
            return null;
        }

        return new VerificationCase(id!, calculation!, inputs, answer, allowed, basis!);
    }

    private static List<CaseValue> Inputs(DocumentNode node, FaultList faults)
    {
        var values = new List<CaseValue>();
        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return values;
        }

        foreach ((string name, DocumentNode member) in node.Members)
        {
            if (string.IsNullOrWhiteSpace(name))
            {
                faults.Add(member, "An input needs a name.");
            }
            else if (reader.OptionalMeasure(name) is { } value)
            {
                values.Add(new CaseValue(name, value));
            }
        }

        return values;
    }
}
