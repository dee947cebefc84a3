using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>The inputs of a sweep in their order, and how they go together.</summary>
public sealed class SweepInputs
{
    private readonly int[] mixed = [];

    /// <summary>Puts inputs together.</summary>
    /// <param name="inputs">At least one, each with a name of its own.</param>
    /// <param name="correlations">Which of them go together; left out, all are independent.</param>
    /// <exception cref="ArgumentException">
    /// There is no input, a name occurs twice or is not known, a pair is stated twice, or the correlations contradict one another.
    /// </exception>
    public SweepInputs(IEnumerable<SweepInput> inputs, IEnumerable<InputCorrelation>? correlations = null)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        this.All = [.. inputs];
        this.Correlations = [.. correlations ?? []];
        if (this.All.Count == 0)
        {
            throw new ArgumentException("At least one input.", nameof(inputs));
        }

        if (this.All.GroupBy(static input => input.Name, StringComparer.Ordinal).FirstOrDefault(static group => group.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two inputs are named '{twice.Key}'.", nameof(inputs));
        }

        if (this.Correlations.Count == 0)
        {
            return;
        }

        // Only inputs that are named go through the copula: the others keep their bits.
        this.mixed = [.. this.Correlations.SelectMany(static pair => new[] { pair.One, pair.Other })
            .Distinct(StringComparer.Ordinal).Select(name => this.IndexOf(name, nameof(correlations))).Order()];
        string[] names = [.. this.mixed.Select(index => this.All[index].Name)];
        double[,] matrix = new double[names.Length, names.Length];
        for (int i = 0; i < names.Length; i++)
        {
            matrix[i, i] = 1;
        }

        var stated = new HashSet<(int, int)>();
        foreach (InputCorrelation pair in this.Correlations)
        {
            int i = Array.IndexOf(names, pair.One);
            int j = Array.IndexOf(names, pair.Other);
            if (!stated.Add((Math.Min(i, j), Math.Max(i, j))))
            {
                throw new ArgumentException($"The correlation of '{pair.One}' and '{pair.Other}' is stated twice.", nameof(correlations));
            }

            matrix[i, j] = matrix[j, i] = pair.Coefficient;
        }

        this.Lower = CorrelationKernel.Triangle(matrix, names);
    }

    /// <summary>The inputs.</summary>
    public ValueList<SweepInput> All { get; }

    /// <summary>How they go together.</summary>
    public ValueList<InputCorrelation> Correlations { get; }

    /// <summary>How many inputs there are.</summary>
    public int Count => this.All.Count;

    internal double[,]? Lower { get; }

    internal ReadOnlySpan<int> Mixed => this.mixed;

    /// <summary>Whether others are the same: names, units, values, and how they go together.</summary>
    internal bool IsSame(SweepInputs other) =>
        ReferenceEquals(this, other) || (this.All.Equals(other.All) && this.Correlations.Equals(other.Correlations));

    /// <summary>Where an input stands, from 0.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="ArgumentException">No input has that name.</exception>
    public int IndexOf(string name) => this.IndexOf(name, nameof(name));

    /// <summary>The inputs as invariant text.</summary>
    public override string ToString() => string.Join("; ", this.All);

    private int IndexOf(string name, string parameter)
    {
        for (int i = 0; i < this.All.Count; i++)
        {
            if (this.All[i].Name == name)
            {
                return i;
            }
        }

        throw new ArgumentException($"No input is named '{name}'; there are {string.Join(", ", this.All.Select(static input => $"'{input.Name}'"))}.", parameter);
    }
}
