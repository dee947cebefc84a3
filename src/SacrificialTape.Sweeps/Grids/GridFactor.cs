using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Sampling;

namespace SacrificialTape.Sweeps.Grids;

/// <summary>
/// One factor of a grid: what changes together. A climate, for instance, has a temperature, a humidity and two depositions; its levels
/// are climates, not combinations of their values.
/// </summary>
public sealed class GridFactor
{
    private readonly double[][] columns;

    /// <summary>A factor of several inputs that change together: the first level of each, then the second, and so on.</summary>
    /// <param name="name">A name of its own among the factors.</param>
    /// <param name="inputs">At least one, all with the same number of levels.</param>
    /// <param name="levelNames">A name for each level, for tables: "coast", "town"; left out, levels have no names.</param>
    /// <exception cref="ArgumentException">
    /// The name is empty, there is no input, the inputs have no levels or different numbers of them, or there are not as many names as
    /// levels, an empty one or one twice.
    /// </exception>
    public GridFactor(string name, IEnumerable<SweepInput> inputs, IEnumerable<string>? levelNames = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(inputs);
        this.Name = name;
        this.Inputs = [.. inputs];
        if (this.Inputs.Count == 0)
        {
            throw new ArgumentException("At least one input.", nameof(inputs));
        }

        foreach (SweepInput input in this.Inputs)
        {
            int levels = input.Values.Levels ?? throw new ArgumentException(
                $"A factor needs levels, and '{input}' has none: list its values, or state a range with its number of levels.", nameof(inputs));
            if (this.Levels != 0 && levels != this.Levels)
            {
                throw new ArgumentException(
                    $"Inputs of one factor change together: '{this.Inputs[0].Name}' has {this.Levels} levels and '{input.Name}' {levels}.",
                    nameof(inputs));
            }

            this.Levels = levels;
        }

        this.LevelNames = [.. levelNames ?? []];
        if (levelNames is not null && (this.LevelNames.Count != this.Levels || this.LevelNames.Any(string.IsNullOrWhiteSpace)
            || this.LevelNames.Distinct(StringComparer.Ordinal).Count() != this.Levels))
        {
            throw new ArgumentException($"As many names as levels, {this.Levels}, none empty and none twice.", nameof(levelNames));
        }

        this.columns = [.. this.Inputs.Select(input => Enumerable.Range(0, this.Levels).Select(input.Values.Level).ToArray())];
    }

    /// <summary>A factor of one input, with its name.</summary>
    /// <param name="input">The input.</param>
    /// <exception cref="ArgumentException">The input has no levels.</exception>
    public GridFactor(SweepInput input)
        : this((input ?? throw new ArgumentNullException(nameof(input))).Name, [input])
    {
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>The inputs that change together.</summary>
    public ValueList<SweepInput> Inputs { get; }

    /// <summary>How many levels it has.</summary>
    public int Levels { get; }

    /// <summary>The names of the levels; none where they have no names.</summary>
    public ValueList<string> LevelNames { get; }

    /// <summary>The values of an input, level by level.</summary>
    internal double[] Column(int input) => this.columns[input];

    /// <summary>Name, inputs and number of levels as invariant text.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{this.Name}: {this.Levels} levels of {string.Join(", ", this.Inputs.Select(static input => input.Name))}");
}
