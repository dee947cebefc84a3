namespace SacrificialTape.Provenance;

/// <summary>How a document was read when something was taken from it.</summary>
public enum SourceReading
{
    /// <summary>The document itself.</summary>
    FirstHand = 0,

    /// <summary>A text that quotes the document.</summary>
    SecondHand,

    /// <summary>From memory: to be checked against the document before use.</summary>
    Recalled,
}
