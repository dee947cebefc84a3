using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>A row that no other row beats: none costs as little or less and lasts as long or longer, one of the two more so.</summary>
public readonly record struct FrontPoint
{
    internal FrontPoint(long row, double cost, double life)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(row);
        this.Row = row;
        this.Cost = cost;
        this.Life = life;
    }

    /// <summary>The row, counted in the whole sweep from 0.</summary>
    public long Row { get; }

    /// <summary>Its cost.</summary>
    public double Cost { get; }

    /// <summary>Its life.</summary>
    public double Life { get; }

    /// <summary>Cost, life and row as invariant text.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"cost {this.Cost:G6}: life {this.Life:G6}, row {this.Row}");
}
