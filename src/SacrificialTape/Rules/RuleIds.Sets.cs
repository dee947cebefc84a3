namespace SacrificialTape.Rules;

/// <content>Rules about the rule set itself.</content>
public static partial class RuleIds
{
    /// <summary>A rule was used before its validity began or after it ended.</summary>
    public const string RuleOutOfValidity = "rule-set.out-of-validity";

    /// <summary>A waiver is used after it has ended, or waives nothing.</summary>
    public const string WaiverUnused = "rule-set.waiver-unused";
}
