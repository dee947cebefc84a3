using SacrificialTape.Surfaces;

namespace SacrificialTape.Documents;

/// <summary>Nominal sizes of pipe in documents, for fittings whose lengths come from the library's tables.</summary>
internal static class PipeSizeText
{
    /// <summary>A size; an arbitrary one, with a fault, where the text names none.</summary>
    internal static PipeSize Read(FormReader reader, string name)
    {
        if (reader.OptionalText(name) is not { } text)
        {
            if (!reader.Has(name))
            {
                reader.Context.Faults.Add(reader.Node, $"'{name}' is missing: a size, as in 'NPS 6'.");
            }

            return null!;
        }

        try
        {
            return PipeSize.Parse(text);
        }
        catch (ArgumentException refused)
        {
            reader.Context.Faults.Add(reader.Node.Members[name], FormReader.Bare(refused.Message));
            return null!;
        }
    }

    /// <summary>The size of the outside diameter under ASME B36.10M, by which the tables of fittings go.</summary>
    internal static string OfAsme(double outsideMm, string place)
    {
        foreach (PipeSizeTable.Row row in PipeSizeTable.Rows)
        {
            if (row.AsmeMm.Equals(outsideMm))
            {
                return "NPS " + row.Nps;
            }
        }

        throw new ArgumentException(FormattableString.Invariant($"{place}: no size of ASME B36.10M is {outsideMm} mm outside."));
    }
}
