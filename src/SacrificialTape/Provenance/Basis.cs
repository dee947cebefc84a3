namespace SacrificialTape.Provenance;

/// <summary>On what a number or a formula rests: the kind of evidence, the document if there is one, and a note.</summary>
public sealed record Basis
{
    private Basis(BasisKind kind, SourceReference? source, string note)
    {
        this.Kind = kind;
        this.Source = source;
        this.Note = note;
    }

    /// <summary>The kind of evidence.</summary>
    public BasisKind Kind { get; }

    /// <summary>The document, for what is published or recalled.</summary>
    public SourceReference? Source { get; }

    /// <summary>A remark on the evidence; may be empty.</summary>
    public string Note { get; }

    /// <summary>Rests on a document; one that was only recalled makes the basis "recalled".</summary>
    /// <param name="source">The document.</param>
    /// <param name="note">A remark; may be left out.</param>
    public static Basis From(SourceReference source, string note = "")
    {
        ArgumentNullException.ThrowIfNull(source);
        CheckRemark(note);
        return new(source.Reading == SourceReading.Recalled ? BasisKind.Recalled : BasisKind.Published, source, note);
    }

    /// <summary>Follows from geometry, arithmetic or a conservation law.</summary>
    /// <param name="note">Which.</param>
    public static Basis FirstPrinciples(string note) => Noted(BasisKind.FirstPrinciples, note);

    /// <summary>What the trade does, without a document to cite.</summary>
    /// <param name="note">A remark; may be left out.</param>
    public static Basis CommonPractice(string note = "")
    {
        CheckRemark(note);
        return new(BasisKind.CommonPractice, null, note);
    }

    /// <summary>An engineer's judgement.</summary>
    /// <param name="note">Why, and how to calibrate it.</param>
    public static Basis Judgement(string note) => Noted(BasisKind.Judgement, note);

    /// <summary>A team's own experience.</summary>
    /// <param name="note">What was seen, where and when.</param>
    public static Basis OwnExperience(string note) => Noted(BasisKind.OwnExperience, note);

    /// <summary>The basis in the words shown to a reader.</summary>
    public override string ToString()
    {
        string head = this.Kind switch
        {
            BasisKind.FirstPrinciples => "first principles",
            BasisKind.CommonPractice => "common practice, no source",
            BasisKind.Judgement => "judgement",
            BasisKind.OwnExperience => "own experience",
            _ => this.Source!.ToString(),
        };
        return this.Note.Length == 0 ? head : $"{head}: {this.Note}";
    }

    private static void CheckRemark(string note)
    {
        ArgumentNullException.ThrowIfNull(note);
        if (note.Length > 0)
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(note);
        }
    }

    private static Basis Noted(BasisKind kind, string note)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(note);
        return new(kind, null, note);
    }
}
