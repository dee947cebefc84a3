namespace SacrificialTape.Sweeps.Grids;

/// <summary>Rows over some factors, and where a row stands among the combinations of fewer of them.</summary>
internal sealed class GridPlaces
{
    private readonly int[] factors;
    private readonly int[] levels;
    private readonly long[] strides;

    internal GridPlaces(IReadOnlyList<GridFactor> all, int[] factors)
    {
        this.factors = factors;
        this.levels = [.. factors.Select(factor => all[factor].Levels)];
        this.strides = new long[factors.Length];
        long rows = 1;
        for (int i = factors.Length - 1; i >= 0; i--)
        {
            this.strides[i] = rows;
            rows = checked(rows * this.levels[i]);
        }

        this.Rows = rows;
    }

    /// <summary>How many rows there are.</summary>
    internal long Rows { get; }

    /// <summary>How many rows follow one another in which only the last factor changes.</summary>
    internal int Run => this.levels[^1];

    /// <summary>Whether a source changes with the last factor.</summary>
    internal bool Follows(GridSource source) => source.Factors.Length > 0 && source.Factors[^1] == this.factors[^1];

    /// <summary>The level of a factor, counted among these, in a row.</summary>
    internal int Level(int factor, long row) => (int)(row / this.strides[factor] % this.levels[factor]);

    /// <summary>The place of a row in a source of some of these factors.</summary>
    internal int Place(GridSource source, long row)
    {
        int place = 0;
        int own = 0;
        for (int i = 0; i < this.factors.Length && own < source.Factors.Length; i++)
        {
            if (this.factors[i] == source.Factors[own])
            {
                place = (place * this.levels[i]) + (int)(row / this.strides[i] % this.levels[i]);
                own++;
            }
        }

        return place;
    }
}
