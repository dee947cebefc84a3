namespace SacrificialTape.Provenance;

/// <summary>A document that a number or formula was taken from, and how it was read.</summary>
public sealed record SourceReference
{
    /// <summary>Describes a document.</summary>
    /// <param name="id">Short name, lower case, unique within a catalogue; for instance <c>iso-9223-2012-table-2</c>.</param>
    /// <param name="document">The document with its edition.</param>
    /// <param name="clause">Clause, table, equation or page.</param>
    /// <param name="taken">What was taken from it.</param>
    /// <param name="reading">How it was read: the document itself, a text that quotes it, or memory.</param>
    /// <exception cref="ArgumentException">One of the texts is empty.</exception>
    public SourceReference(string id, string document, string clause, string taken, SourceReading reading)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        ArgumentException.ThrowIfNullOrWhiteSpace(document);
        ArgumentException.ThrowIfNullOrWhiteSpace(clause);
        ArgumentException.ThrowIfNullOrWhiteSpace(taken);
        this.Id = id;
        this.Document = document;
        this.Clause = clause;
        this.Taken = taken;
        this.Reading = reading;
    }

    /// <summary>Short name, unique within a catalogue.</summary>
    public string Id { get; }

    /// <summary>The document with its edition.</summary>
    public string Document { get; }

    /// <summary>Clause, table, equation or page.</summary>
    public string Clause { get; }

    /// <summary>What was taken from it.</summary>
    public string Taken { get; }

    /// <summary>How it was read.</summary>
    public SourceReading Reading { get; }

    /// <summary>Document and clause, with a warning when it was only recalled.</summary>
    public override string ToString() => this.Reading switch
    {
        SourceReading.Recalled => $"{this.Document}, {this.Clause} (recalled, check before use)",
        SourceReading.SecondHand => $"{this.Document}, {this.Clause} (as quoted elsewhere)",
        _ => $"{this.Document}, {this.Clause}",
    };
}
