using SacrificialTape.Quantities;
using SacrificialTape.Sweeps.Batch;

namespace SacrificialTape.Sweeps.Grids;

/// <summary>What a stage needs for some consecutive rows.</summary>
public sealed class StageRows
{
    private readonly GridStage stage;
    private readonly double[][] memory;
    private readonly int[] places;
    private readonly bool[] single;

    internal StageRows(GridStage stage)
    {
        this.stage = stage;
        this.memory = new double[stage.Needs.Count][];
        this.places = new int[stage.Needs.Count];
        this.single = new bool[stage.Needs.Count];
    }

    /// <summary>How many rows there are.</summary>
    public int Rows { get; internal set; }

    /// <summary>The names of what there is.</summary>
    public ValueList<string> Names => this.stage.Needs;

    /// <summary>An input or an answer of a stage before: a number for each row, or one for all where it does not change in them.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="ArgumentException">The stage did not declare that it needs it.</exception>
    public Column this[string name]
    {
        get
        {
            for (int i = 0; i < this.stage.Needs.Count; i++)
            {
                if (this.stage.Needs[i] == name)
                {
                    return this.single[i] ? this.memory[i][this.places[i]] : this.memory[i].AsSpan(this.places[i], this.Rows);
                }
            }

            throw new ArgumentException(
                $"The stage that answers {string.Join(", ", this.stage.Answers)} did not declare that it needs '{name}', only {string.Join(", ", this.stage.Needs.Select(static one => $"'{one}'"))}.",
                nameof(name));
        }
    }

    internal void Set(int need, double[] from, int place, bool isSingle)
    {
        this.memory[need] = from;
        this.places[need] = place;
        this.single[need] = isSingle;
    }
}
