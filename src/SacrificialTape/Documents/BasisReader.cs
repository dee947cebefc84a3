using SacrificialTape.Provenance;

namespace SacrificialTape.Documents;

/// <summary>Reads and writes on what a number rests.</summary>
internal static class BasisReader
{
    /// <summary>Reads a basis; null, with faults, when it cannot be read.</summary>
    internal static Basis? Read(DocumentNode node, FaultList faults)
    {
        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return null;
        }

        BasisKind? kind = reader.Word("kind", Words.Bases);
        string? note = reader.OptionalText("note");
        bool fromDocument = kind is BasisKind.Published or BasisKind.Recalled;
        SourceReference? source = reader.Optional("source") is { } member ? Source(member, faults) : null;
        bool hasSource = reader.Has("source");
        bool noteFailed = reader.Has("note") && note is null;
        reader.Close();
        if (kind is null || noteFailed || (hasSource && source is null))
        {
            return null;
        }

        string word = Words.Of(Words.Bases, kind.Value);
        if (fromDocument != hasSource)
        {
            faults.Add(node, fromDocument ? $"A basis of kind '{word}' needs 'source'." : $"A basis of kind '{word}' takes no 'source'.");
            return null;
        }

        if (source is not null)
        {
            var basis = Basis.From(source, note ?? string.Empty);
            if (basis.Kind == kind)
            {
                return basis;
            }

            faults.Add(node, $"The kind is '{word}', but the source was read as '{Words.Of(Words.Readings, source.Reading)}'.");
            return null;
        }

        if (note is null && kind != BasisKind.CommonPractice)
        {
            faults.Add(node, $"A basis of kind '{word}' needs a 'note' that says why.");
            return null;
        }

        return kind switch
        {
            BasisKind.FirstPrinciples => Basis.FirstPrinciples(note!),
            BasisKind.Judgement => Basis.Judgement(note!),
            BasisKind.OwnExperience => Basis.OwnExperience(note!),
            _ => Basis.CommonPractice(note ?? string.Empty),
        };
    }

    /// <summary>Writes a basis as an object.</summary>
    internal static void Write(DocumentWriter writer, string name, Basis basis)
    {
        writer.Open(name);
        writer.Text("kind", Words.Of(Words.Bases, basis.Kind));
        if (basis.Note.Length > 0)
        {
            writer.Text("note", basis.Note);
        }

        if (basis.Source is { } source)
        {
            writer.Open("source");
            writer.Text("id", source.Id);
            writer.Text("document", source.Document);
            writer.Text("clause", source.Clause);
            writer.Text("taken", source.Taken);
            writer.Text("reading", Words.Of(Words.Readings, source.Reading));
            writer.Close();
        }

        writer.Close();
    }

    private static SourceReference? Source(DocumentNode node, FaultList faults)
    {
        if (ObjectReader.Open(node, faults) is not { } reader)
        {
            return null;
        }

        string? id = reader.Text("id", "a short name for the document");
        string? document = reader.Text("document", "the document with its edition");
        string? clause = reader.Text("clause", "clause, table, equation or page");
        string? taken = reader.Text("taken", "what was taken from it");
        SourceReading? reading = reader.Word("reading", Words.Readings);
        reader.Close();
        return id is null || document is null || clause is null || taken is null || reading is null
            ? null
            : new SourceReference(id, document, clause, taken, reading.Value);
    }
}
