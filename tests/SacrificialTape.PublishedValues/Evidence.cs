using SacrificialTape.Provenance;

namespace SacrificialTape.PublishedValues;

/// <summary>Where an expected value comes from: the document or the mark, as data that goes onto the page.</summary>
internal sealed record Evidence
{
    private Evidence(EvidenceKind kind, SourceReference? source, string note)
    {
        this.Kind = kind;
        this.Source = source;
        this.Note = note;
    }

    internal EvidenceKind Kind { get; }

    /// <summary>The document; null for what has none.</summary>
    internal SourceReference? Source { get; }

    /// <summary>The arithmetic, the construction or a remark.</summary>
    internal string Note { get; }

    /// <summary>A number that stands in the document; how the document was read decides the kind.</summary>
    internal static Evidence From(SourceReference source, string note = "") => new(
        source.Reading switch
        {
            SourceReading.FirstHand => EvidenceKind.Published,
            SourceReading.SecondHand => EvidenceKind.PublishedSecondHand,
            _ => EvidenceKind.Recalled,
        },
        source,
        note);

    /// <summary>A formula that stands in the document, worked out apart from the library.</summary>
    internal static Evidence FromFormula(SourceReference source, string workedOut) =>
        source.Reading == SourceReading.Recalled
            ? throw new ArgumentException("A recalled formula is not a published one.", nameof(source))
            : new(EvidenceKind.PublishedFormula, source, Said(workedOut));

    internal static Evidence CommonPractice(string note) => new(EvidenceKind.CommonPractice, null, Said(note));

    /// <summary>Arithmetic of another way; the source, if any, is that of the numbers that go in.</summary>
    internal static Evidence FirstPrinciples(string arithmetic, SourceReference? inputs = null) =>
        new(EvidenceKind.FirstPrinciples, inputs, Said(arithmetic));

    /// <summary>A number from another program; the source, if any, is that of the numbers that go in.</summary>
    internal static Evidence ComputedElsewhere(string how, SourceReference? inputs = null) =>
        new(EvidenceKind.ComputedElsewhere, inputs, Said(how));

    private static string Said(string text) => string.IsNullOrWhiteSpace(text)
        ? throw new ArgumentException("Say how the number comes about.", nameof(text))
        : text;
}
