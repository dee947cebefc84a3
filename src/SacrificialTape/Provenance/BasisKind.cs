namespace SacrificialTape.Provenance;

/// <summary>On what a number or a formula rests. Shown wherever the number is shown.</summary>
public enum BasisKind
{
    /// <summary>Follows from geometry, arithmetic or a conservation law; the derivation stands in the docs.</summary>
    FirstPrinciples = 0,

    /// <summary>Stands in a published document that was read, at first or second hand.</summary>
    Published,

    /// <summary>What the trade does; no document says so.</summary>
    CommonPractice,

    /// <summary>From memory of a named document that was not re-read: to be checked before use.</summary>
    Recalled,

    /// <summary>An engineer's judgement: to be calibrated by whoever uses it.</summary>
    Judgement,

    /// <summary>A team's own measured experience, described in a note.</summary>
    OwnExperience,
}
