using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>The least value at which enough rows reach a requirement, found on the same rows throughout, and how exact it is.</summary>
/// <param name="Value">The least value: here enough rows reach the requirement.</param>
/// <param name="Short">A value just below it, at which too few do: the least value of these rows lies between the two.</param>
/// <param name="Share">The share of rows that reach the requirement at <paramref name="Value"/>.</param>
/// <param name="Interval">
/// Between which values the least value of infinitely many independent rows lies with the confidence asked for: the error of
/// chance. A bound is infinite where these rows, or the values that may be tried, do not tell it.
/// </param>
/// <param name="Rows">How many rows there were.</param>
/// <param name="NotANumber">How many rows had no answer at the value found; they count as short of the requirement.</param>
public sealed record LeastValue(double Value, double Short, double Share, ConfidenceInterval Interval, long Rows, long NotANumber)
{
    /// <summary>Value and interval as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Value:G6} ({this.Interval.Low:G6} to {this.Interval.High:G6}), share {this.Share:0.####} of {this.Rows} rows");
}
