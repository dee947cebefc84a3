using SacrificialTape.Rules;

namespace SacrificialTape.ServiceLife;

/// <summary>A loss law that has something to say of the lives it is used for, for instance that they outrun its data.</summary>
public interface IJudgedLossLaw : ILossLaw
{
    /// <summary>What must be said of a life under this law.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="longest">The longest life of one layer that was worked out with it.</param>
    /// <param name="subject">How findings name the place, for instance the survey line.</param>
    IEnumerable<Finding> Judge(Lifetime longest, RuleSet rules, string subject);
}
