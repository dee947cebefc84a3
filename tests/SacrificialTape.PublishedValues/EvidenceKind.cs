namespace SacrificialTape.PublishedValues;

/// <summary>What an expected value is worth as evidence.</summary>
internal enum EvidenceKind
{
    /// <summary>A number printed in a document that was read.</summary>
    Published = 0,

    /// <summary>A number read in a text that quotes the document.</summary>
    PublishedSecondHand,

    /// <summary>A formula printed in a document, worked out here apart from the library; the number itself is not printed.</summary>
    PublishedFormula,

    /// <summary>A number from memory of a named document.</summary>
    Recalled,

    /// <summary>What the trade does, without a document.</summary>
    CommonPractice,

    /// <summary>Arithmetic or a construction that goes another way than the library does.</summary>
    FirstPrinciples,

    /// <summary>A number typed in from another program.</summary>
    ComputedElsewhere,
}
