using SacrificialTape.Provenance;
using SacrificialTape.Rules;

namespace SacrificialTape.Documents;

/// <summary>The words by which documents name choices. A closed list in each: a word that is not in it is refused.</summary>
internal static class Words
{
    internal static readonly IReadOnlyList<(string Word, RuleKind Value)> Kinds =
    [
        ("minimum", RuleKind.Minimum), ("maximum", RuleKind.Maximum), ("below", RuleKind.Below),
        ("allowance", RuleKind.Allowance), ("statement", RuleKind.Statement),
    ];

    internal static readonly IReadOnlyList<(string Word, Severity Value)> Severities =
        [("note", Severity.Note), ("warning", Severity.Warning), ("stop", Severity.Stop)];

    internal static readonly IReadOnlyList<(string Word, BasisKind Value)> Bases =
    [
        ("first principles", BasisKind.FirstPrinciples), ("published", BasisKind.Published), ("common practice", BasisKind.CommonPractice),
        ("recalled", BasisKind.Recalled), ("judgement", BasisKind.Judgement), ("own experience", BasisKind.OwnExperience),
    ];

    internal static readonly IReadOnlyList<(string Word, SourceReading Value)> Readings =
        [("first hand", SourceReading.FirstHand), ("second hand", SourceReading.SecondHand), ("recalled", SourceReading.Recalled)];

    internal static string Of<T>(IReadOnlyList<(string Word, T Value)> words, T value)
        where T : struct, Enum => words.First(pair => pair.Value.Equals(value)).Word;
}
