using SacrificialTape.Quantities;
using SacrificialTape.Rules;
using SacrificialTape.TakeOff;

namespace SacrificialTape.Jobs;

/// <summary>A survey and the choices made for it: all that an estimate needs.</summary>
/// <remarks>Lines: at least one, each tag once.</remarks>
public sealed record Job
{
    /// <summary>Describes a job.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="lines">The survey lines.</param>
    /// <param name="takeOff">How strips are cut and how much spare is bought.</param>
    /// <param name="rules">The rule set; left out: the library's own.</param>
    /// <param name="ownRules">The code for rules of the set that the library does not know; left out: none.</param>
    /// <exception cref="ArgumentException">
    /// There is no line, a tag stands twice, the name is empty, or a rule of the host's own is not in the set, stands twice
    /// or is one of the library's.
    /// </exception>
    public Job(string name, IEnumerable<SurveyLine> lines, TakeOffChoices takeOff, RuleSet? rules = null, IEnumerable<IOwnRule>? ownRules = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(takeOff);
        this.Name = name;
        this.Lines = new ValueList<SurveyLine>(lines);
        this.TakeOff = takeOff;
        this.JudgedBy = new LineRules(rules ?? RuleSet.Default, ownRules?.Listed(), nameof(ownRules));
        if (this.Lines.Count == 0)
        {
            throw new ArgumentException("A job needs at least one survey line.", nameof(lines));
        }

        var tags = new HashSet<string>(this.Lines.Count, StringComparer.Ordinal);
        foreach (SurveyLine line in this.Lines)
        {
            if (!tags.Add(line.Tag))
            {
                throw new ArgumentException($"The tag '{line.Tag}' stands twice in the survey.", nameof(lines));
            }
        }
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The survey lines.</summary>
    public ValueList<SurveyLine> Lines { get; }

    /// <summary>How strips are cut and how much spare is bought.</summary>
    public TakeOffChoices TakeOff { get; }

    /// <summary>The rule set.</summary>
    public RuleSet Rules => this.JudgedBy.Set;

    /// <summary>The code for rules of the set that the library does not know.</summary>
    public ValueList<IOwnRule> OwnRules => this.JudgedBy.Own;

    /// <summary>
    /// Rules of the set that neither the library nor a rule of the host's own judges by: nobody looks at them. A host that
    /// reads another's rule set should say so.
    /// </summary>
    public ValueList<Rule> UnjudgedRules => this.JudgedBy.Unjudged;

    internal LineRules JudgedBy { get; }

    /// <summary>The same lines and choices judged by another rule set. What was once taken from a set, such as laps, stays as it is.</summary>
    /// <param name="rules">The rule set.</param>
    /// <exception cref="ArgumentException">The set has no rule for code of the job's own: nothing would be left to judge by.</exception>
    public Job Under(RuleSet rules)
    {
        ArgumentNullException.ThrowIfNull(rules);
        return new(this.Name, this.Lines, this.TakeOff, rules, this.OwnRules);
    }

    /// <summary>Works the job out, line by line and in total.</summary>
    public JobEstimate Estimate() => JobEstimate.Of(this);

    /// <summary>Name and number of lines.</summary>
    public override string ToString() => $"{this.Name}: {this.Lines.Count} line(s)";
}
