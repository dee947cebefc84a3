namespace SacrificialTape.Documents;

/// <summary>What came of a verification case.</summary>
public enum CaseOutcome
{
    /// <summary>The answer lies within the tolerance.</summary>
    Agrees = 0,

    /// <summary>The answer lies outside the tolerance.</summary>
    Differs,

    /// <summary>The calculation was asked and refused the values: there is no answer.</summary>
    Refused,

    /// <summary>The question could not be put: the calculation is unknown, an input is missing or unknown, or a value is of another kind.</summary>
    NotAsked,
}
