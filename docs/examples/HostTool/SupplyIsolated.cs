using SacrificialTape.Jobs;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;

namespace HostTool;

/// <summary>A stop for each column whose supply is not known to be isolated. What is known is this tool's own data.</summary>
/// <param name="isolated">Tags of the columns that a competent person has isolated and proved dead.</param>
#region stop
public sealed class SupplyIsolated(IEnumerable<string> isolated) : IOwnRule
{
    private readonly HashSet<string> isolated = new(isolated, StringComparer.Ordinal);

    public string RuleId => "lighting.supply.live";

    public IEnumerable<Finding> Judge(Rule rule, SurveyLine line, LifeEstimate life) =>
        this.isolated.Contains(line.Tag) ? [] : [rule.State(line.Tag)];
}
#endregion
