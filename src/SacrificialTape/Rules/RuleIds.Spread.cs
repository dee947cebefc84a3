namespace SacrificialTape.Rules;

/// <content>Lives with their uncertainty.</content>
public static partial class RuleIds
{
    /// <summary>The required life is reached less surely than wanted.</summary>
    public const string ConfidenceNotReached = "life.confidence-not-reached";

    /// <summary>How widely the inputs of a life are spread is a judgement.</summary>
    public const string SpreadIsJudgement = "life.spread-is-judgement";
}
