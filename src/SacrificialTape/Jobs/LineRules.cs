using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.ServiceLife;

namespace SacrificialTape.Jobs;

/// <summary>What lines are judged by: the rule set, and the code of a host for rules that the library does not know.</summary>
internal sealed record LineRules
{
    internal LineRules(RuleSet rules, ValueList<IOwnRule>? own, string parameter)
    {
        this.Set = rules;
        this.Own = own ?? ValueList<IOwnRule>.Empty;
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (IOwnRule one in this.Own)
        {
            if (!rules.TryGet(one.RuleId, out _))
            {
                throw new ArgumentException($"Nothing to judge by: the rule set '{rules.Name}' {rules.Version} has no rule '{one.RuleId}'.", parameter);
            }

            if (RuleSet.Default.TryGet(one.RuleId, out _))
            {
                throw new ArgumentException($"'{one.RuleId}' is a rule of the library, which judges by it itself.", parameter);
            }

            if (!seen.Add(one.RuleId))
            {
                throw new ArgumentException($"Two pieces of code judge by the rule '{one.RuleId}'.", parameter);
            }
        }
    }

    internal RuleSet Set { get; }

    internal ValueList<IOwnRule> Own { get; }

    /// <summary>Rules of the set that nothing judges by.</summary>
    internal ValueList<Rule> Unjudged => NotJudged(this.Set, this.Own.Select(static one => one.RuleId));

    /// <summary>Rules of a set that neither the library nor one of some pieces of code judges by.</summary>
    internal static ValueList<Rule> NotJudged(RuleSet rules, IEnumerable<string> judged)
    {
        var known = new HashSet<string>(judged, StringComparer.Ordinal);
        return new(rules.Rules.Where(rule => !RuleSet.Default.TryGet(rule.Id, out _) && !known.Contains(rule.Id)));
    }

    internal IEnumerable<Finding> JudgeOwn(SurveyLine line, LifeEstimate life)
    {
        foreach (IOwnRule one in this.Own)
        {
            Rule rule = this.Set[one.RuleId];
            foreach (Finding finding in one.Judge(rule, line, life))
            {
                // Another rule would slip past waivers, and past the fingerprint that says by what was judged.
                yield return finding.Rule == rule
                    ? finding
                    : throw new InvalidOperationException($"The code for the rule '{rule.Id}' found something by another rule: {finding}");
            }
        }
    }
}
