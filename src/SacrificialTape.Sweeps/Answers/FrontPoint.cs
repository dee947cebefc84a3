using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>A row that no other row beats: none costs as little or less and lasts as long or longer, one of the two more so.</summary>
/// <param name="Row">The row, counted in the whole sweep from 0.</param>
/// <param name="Cost">Its cost.</param>
/// <param name="Life">Its life.</param>
public readonly record struct FrontPoint(long Row, double Cost, double Life)
{
    /// <summary>Cost, life and row as invariant text.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"cost {this.Cost:G6}: life {this.Life:G6}, row {this.Row}");
}
