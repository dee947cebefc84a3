using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>The least value at which enough rows reach a requirement, found on the same rows throughout, and how exact it is.</summary>
public sealed record LeastValue
{
    internal LeastValue(double value, double tooLow, double share, ConfidenceInterval interval, long rows, long notANumber)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(tooLow, value);
        ArgumentOutOfRangeException.ThrowIfNegative(notANumber);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(notANumber, rows);
        this.Value = value;
        this.Short = tooLow;
        this.Share = share;
        this.Interval = interval;
        this.Rows = rows;
        this.NotANumber = notANumber;
    }

    /// <summary>The least value: here enough rows reach the requirement.</summary>
    public double Value { get; }

    /// <summary>A value just below it, at which too few do: the least value of these rows lies between the two.</summary>
    public double Short { get; }

    /// <summary>The share of rows that reach the requirement at <see cref="Value"/>.</summary>
    public double Share { get; }

    /// <summary>
    /// Between which values the least value of infinitely many independent rows lies with the confidence asked for: the error of
    /// chance. A bound is infinite where these rows, or the values that may be tried, do not tell it.
    /// </summary>
    public ConfidenceInterval Interval { get; }

    /// <summary>How many rows there were.</summary>
    public long Rows { get; }

    /// <summary>How many rows had no answer at the value found; they count as short of the requirement.</summary>
    public long NotANumber { get; }

    /// <summary>Value and interval as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.Value:G6} ({this.Interval.Low:G6} to {this.Interval.High:G6}), share {this.Share:0.####} of {this.Rows} rows");
}
