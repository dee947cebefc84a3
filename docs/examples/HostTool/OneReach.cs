using SacrificialTape.Jobs;
using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;
using SacrificialTape.Wrapping;

namespace HostTool;

/// <summary>The longest piece of a line against what one crew handles from one position of the lift.</summary>
#region rule
public sealed class OneReach : IOwnRule
{
    public string RuleId => "lighting.reach.maximum";

    public IEnumerable<Finding> Judge(Rule rule, SurveyLine line, LifeEstimate life)
    {
        Strip longest = line.Lay.Strips.MaxBy(static strip => strip.Length)!;
        if (rule.Judge(Measure.Of(longest.Length), line.Tag) is { } finding)
        {
            yield return finding;
        }
    }
}
#endregion
