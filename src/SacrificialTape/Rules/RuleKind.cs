namespace SacrificialTape.Rules;

/// <summary>What the number of a rule is for.</summary>
public enum RuleKind
{
    /// <summary>The measured value must be at least the limit.</summary>
    Minimum = 0,

    /// <summary>The measured value must be at most the limit.</summary>
    Maximum,

    /// <summary>The number enters a calculation as an allowance; nothing is measured against it.</summary>
    Allowance,

    /// <summary>No number of its own: a statement that holds whenever its case arises, or a limit that the job sets.</summary>
    Statement,

    /// <summary>The measured value must stay below the limit: the limit itself breaks the rule.</summary>
    Below,
}
