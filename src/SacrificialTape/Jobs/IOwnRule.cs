using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Jobs;

/// <summary>
/// A rule that the library does not know and a host judges by: the rule itself is data in the rule set, this is the code
/// that measures a line against it.
/// </summary>
/// <remarks>
/// It is asked once for each line while an estimate is made, and once for each lay that a choice tries. The same line must
/// always get the same answer; from several threads at once if they make estimates with the same code.
/// </remarks>
public interface IOwnRule
{
    /// <summary>Which rule of the set it judges by.</summary>
    string RuleId { get; }

    /// <summary>Holds a line against the rule.</summary>
    /// <param name="rule">The rule as the set in use states it: <see cref="Rule.Judge"/> and <see cref="Rule.State"/> make its findings.</param>
    /// <param name="line">The line with its lay; findings are about its <see cref="SurveyLine.Tag"/>.</param>
    /// <param name="life">How long its zinc lasts.</param>
    /// <returns>The findings, none when the rule holds; all of them by this rule.</returns>
    IEnumerable<Finding> Judge(Rule rule, SurveyLine line, LifeEstimate life);
}
