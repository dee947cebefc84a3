using System.Text.Json;

namespace SacrificialTape.Documents;

/// <summary>Reads JSON strictly into nodes that know their place: no comments, no trailing commas, no member twice.</summary>
internal static class DocumentTree
{
    /// <summary>Reads a document, or throws with its faults.</summary>
    internal static DocumentNode Read(ReadOnlyMemory<byte> utf8, DocumentLimits limits, FaultList faults)
    {
        if (utf8.Length > limits.Bytes)
        {
            faults.Add(0, "$", $"The document has {utf8.Length} bytes; at most {limits.Bytes} are read.");
            throw faults.Exception();
        }

        // One level more than allowed, so that the fault can be told in our own words and with its path.
        var reader = new Utf8JsonReader(utf8.Span, new JsonReaderOptions { MaxDepth = limits.Depth + 1 });
        DocumentPlace place = DocumentPlace.Root;
        try
        {
            reader.Read();
            DocumentNode root = Value(ref reader, ref place, new MemberNames(), limits, faults);
            place = DocumentPlace.Root;
            reader.Read(); // anything after the value is a fault of the text
            return root;
        }
        catch (JsonException e)
        {
            faults.Add(Offset(utf8.Span, e), place.ToString(), $"This is not JSON as RFC 8259 has it: {Reason(e)}");
            throw faults.Exception();
        }
        catch (InvalidOperationException e)
        {
            // A text with bytes that are no UTF-8, or with half of a surrogate pair.
            faults.Add(reader.TokenStartIndex, place.ToString(), $"This text cannot be read: {e.Message}");
            throw faults.Exception();
        }
    }

    private static DocumentNode Value(ref Utf8JsonReader reader, ref DocumentPlace place, MemberNames names, DocumentLimits limits, FaultList faults)
    {
        DocumentPlace own = place;
        long offset = reader.TokenStartIndex;
        switch (reader.TokenType)
        {
            case JsonTokenType.StartObject:
                Deeper(reader.CurrentDepth, own, offset, limits, faults);
                return Object(ref reader, ref place, names, offset, limits, faults);
            case JsonTokenType.StartArray:
                Deeper(reader.CurrentDepth, own, offset, limits, faults);
                return Array(ref reader, ref place, names, offset, limits, faults);
            case JsonTokenType.String:
                return Leaf(JsonValueKind.String, own, offset, reader.GetString()!);
            case JsonTokenType.Number:
                return Leaf(JsonValueKind.Number, own, offset, System.Text.Encoding.ASCII.GetString(reader.ValueSpan));
            case JsonTokenType.Null:
                return Leaf(JsonValueKind.Null, own, offset, string.Empty);
            default:
                return Leaf(reader.TokenType == JsonTokenType.True ? JsonValueKind.True : JsonValueKind.False, own, offset, string.Empty);
        }
    }

    private static DocumentNode Object(ref Utf8JsonReader reader, ref DocumentPlace place, MemberNames names, long offset, DocumentLimits limits, FaultList faults)
    {
        DocumentPlace own = place;
        var members = new DocumentMembers();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            long nameOffset = reader.TokenStartIndex;
            string name = names.Of(ref reader);
            place = new DocumentPlace(own, name, 0);
            reader.Read();
            DocumentNode value = Value(ref reader, ref place, names, limits, faults);
            if (!members.TryAdd(name, value))
            {
                faults.Add(nameOffset, value.Path, $"'{Short(name)}' stands twice in this object.");
            }
        }

        place = own;
        return new DocumentNode(JsonValueKind.Object, own, offset, string.Empty, members, DocumentNode.NoItems);
    }

    private static DocumentNode Array(ref Utf8JsonReader reader, ref DocumentPlace place, MemberNames names, long offset, DocumentLimits limits, FaultList faults)
    {
        DocumentPlace own = place;
        var items = new List<DocumentNode>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            place = new DocumentPlace(own, null, items.Count);
            items.Add(Value(ref reader, ref place, names, limits, faults));
        }

        place = own;
        return new DocumentNode(JsonValueKind.Array, own, offset, string.Empty, DocumentMembers.None, items);
    }

    private static DocumentNode Leaf(JsonValueKind kind, DocumentPlace place, long offset, string text) =>
        new(kind, place, offset, text, DocumentMembers.None, DocumentNode.NoItems);

    private static void Deeper(int depth, DocumentPlace place, long offset, DocumentLimits limits, FaultList faults)
    {
        if (depth >= limits.Depth)
        {
            faults.Add(offset, place.ToString(), $"Nested deeper than {limits.Depth} levels.");
            throw faults.Exception();
        }
    }

    /// <summary>The path of a member: a plain name after a point, any other in brackets.</summary>
    internal static string Member(string path, string name) =>
        name.Length is > 0 and <= 60 && name.All(static c => char.IsAsciiLetterOrDigit(c) || c is '_' or '-')
            ? $"{path}.{name}"
            : $"{path}['{Short(name)}']";

    /// <summary>A text from the document as a fault may show it: not longer than a line, without control characters.</summary>
    internal static string Short(string text)
    {
        string shown = text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 57), "...");
        return string.Concat(shown.Select(static c => char.IsControl(c) ? '\uFFFD' : c));
    }

    private static long Offset(ReadOnlySpan<byte> text, JsonException e)
    {
        int at = 0;
        for (long line = e.LineNumber ?? 0; line > 0; line--)
        {
            at += text[at..].IndexOf((byte)'\n') + 1;
        }

        return at + (e.BytePositionInLine ?? 0);
    }

    // The platform adds its own count of line and byte, which starts at 0; ours stands before the message.
    private static string Reason(JsonException e)
    {
        int tail = e.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return tail < 0 ? e.Message : e.Message[..tail];
    }
}
