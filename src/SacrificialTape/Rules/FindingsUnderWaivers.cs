using SacrificialTape.Quantities;

namespace SacrificialTape.Rules;

/// <summary>Findings sorted by whether somebody has waived them.</summary>
/// <remarks>Every finding is in one of the two lists, and every waiver that did nothing is told: nothing is lost.</remarks>
public sealed record FindingsUnderWaivers
{
    private FindingsUnderWaivers(ValueList<Finding> open, ValueList<WaivedFinding> waived, ValueList<Waiver> unused)
    {
        this.Open = open;
        this.Waived = waived;
        this.Unused = unused;
    }

    /// <summary>Findings that nobody has waived, in their order.</summary>
    public ValueList<Finding> Open { get; }

    /// <summary>Findings that were waived, in their order.</summary>
    public ValueList<WaivedFinding> Waived { get; }

    /// <summary>Waivers that waived nothing: no such finding, or not on this day.</summary>
    public ValueList<Waiver> Unused { get; }

    /// <summary>Sorts findings.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="waivers">The waivers; the first that covers a finding is the one shown beside it.</param>
    /// <param name="day">The day of the estimate.</param>
    public static FindingsUnderWaivers Of(IEnumerable<Finding> findings, IEnumerable<Waiver> waivers, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var given = new ValueList<Waiver>(waivers);
        ILookup<(string RuleId, string Subject), Waiver> byPlace = given.ToLookup(static waiver => (waiver.RuleId, waiver.Subject));
        var used = new HashSet<Waiver>(ReferenceEqualityComparer.Instance);
        var open = new List<Finding>();
        var waived = new List<WaivedFinding>();
        foreach (Finding finding in findings)
        {
            Waiver[] covering = [.. byPlace[(finding.Rule.Id, finding.Subject)].Where(waiver => waiver.Covers(finding, day))];
            if (covering.Length == 0)
            {
                open.Add(finding);
                continue;
            }

            used.UnionWith(covering);
            waived.Add(new WaivedFinding(finding, covering[0]));
        }

        return new(new ValueList<Finding>(open), new ValueList<WaivedFinding>(waived), new ValueList<Waiver>(given.Where(waiver => !used.Contains(waiver))));
    }

    /// <summary>A finding for each waiver that did nothing.</summary>
    /// <param name="rules">The rule set.</param>
    public IEnumerable<Finding> Judge(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        foreach (Waiver waiver in this.Unused)
        {
            yield return rules[RuleIds.WaiverUnused].State($"waiver of {waiver.RuleId} on {waiver.Subject}");
        }
    }

    /// <summary>How many are open and how many waived.</summary>
    public override string ToString() => $"{this.Open.Count} open, {this.Waived.Count} waived, {this.Unused.Count} waiver(s) unused";
}
