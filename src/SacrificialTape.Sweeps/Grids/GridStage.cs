using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Grids;

/// <summary>
/// One stage of a model on a grid: what it needs, what it answers. It is worked out once for each combination of the factors behind
/// what it needs, and for no others: a rate from a climate once for each climate, however many tapes there are.
/// </summary>
public sealed class GridStage
{
    /// <summary>Declares a stage.</summary>
    /// <param name="needs">Names of inputs, and of answers of stages before it; what is not named here cannot be read.</param>
    /// <param name="answers">Names of its answers, at least one.</param>
    /// <param name="model">What works them out.</param>
    /// <exception cref="ArgumentException">There is no need or no answer, or a name is empty or occurs twice.</exception>
    public GridStage(IEnumerable<string> needs, IEnumerable<string> answers, StageModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        this.Needs = Names(needs, nameof(needs));
        this.Answers = Names(answers, nameof(answers));
        this.Model = model;
    }

    /// <summary>What it needs.</summary>
    public ValueList<string> Needs { get; }

    /// <summary>What it answers.</summary>
    public ValueList<string> Answers { get; }

    internal StageModel Model { get; }

    /// <summary>Answers and needs in a few words.</summary>
    public override string ToString() => $"{string.Join(", ", this.Answers)} from {string.Join(", ", this.Needs)}";

    private static ValueList<string> Names(IEnumerable<string> names, string parameter)
    {
        ArgumentNullException.ThrowIfNull(names, parameter);
        ValueList<string> all = [.. names];
        return all.Count > 0 && !all.Any(string.IsNullOrWhiteSpace) && all.Distinct(StringComparer.Ordinal).Count() == all.Count
            ? all
            : throw new ArgumentException("At least one name, none empty and none twice.", parameter);
    }
}
