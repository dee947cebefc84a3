using System.Globalization;
using System.Text.Json;

namespace SacrificialTape.Documents;

/// <summary>The first two members of every document: what it is, and by which version of its format it is written.</summary>
internal static class DocumentHeader
{
    internal static void Write(DocumentWriter writer, string kind, int schema)
    {
        writer.Text("document", kind);
        writer.Number("schema", schema);
    }

    /// <summary>Reads the header; false, with faults, when the rest must not be read.</summary>
    internal static bool Read(ObjectReader reader, string kind, int newest, FaultList faults) => Read(reader, kind, newest, faults, out _);

    /// <summary>Reads the header and the version the document is written by; false, with faults, when the rest must not be read.</summary>
    internal static bool Read(ObjectReader reader, string kind, int newest, FaultList faults, out int version)
    {
        version = 0;
        string? document = reader.Text("document", $"expected '{kind}'");
        if (document is not null && document != kind)
        {
            faults.Add(reader.Node.Members["document"], $"This is a '{DocumentTree.Short(document)}'. Expected '{kind}'.");
            return false;
        }

        if (reader.Required("schema", $"the version of the format, at most {newest}") is not { } schema)
        {
            return false;
        }

        bool whole = int.TryParse(schema.Text, NumberStyles.None, CultureInfo.InvariantCulture, out version) && version > 0;
        if (schema.Kind != JsonValueKind.Number || !whole)
        {
            faults.Add(schema, $"'schema' must be a whole number from 1 to {newest}.");
            return false;
        }

        if (version > newest)
        {
            faults.Add(schema, $"The document is written by version {version} of its format; this library reads up to {newest}. Use a newer library.");
            return false;
        }

        return document is not null;
    }
}
