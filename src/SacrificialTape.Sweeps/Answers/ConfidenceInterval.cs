using System.Globalization;

namespace SacrificialTape.Sweeps.Answers;

/// <summary>Between which values a figure lies with a stated confidence.</summary>
public readonly record struct ConfidenceInterval
{
    internal ConfidenceInterval(double low, double high)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(low, high);
        this.Low = low;
        this.High = high;
    }

    /// <summary>The lower bound.</summary>
    public double Low { get; }

    /// <summary>The upper bound.</summary>
    public double High { get; }

    /// <summary>Whether a value lies in it, bounds included.</summary>
    /// <param name="value">The value.</param>
    public bool Holds(double value) => value >= this.Low && value <= this.High;

    /// <summary>Both bounds as invariant text.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.Low:G4} to {this.High:G4}");

    /// <summary>A figure with its standard error: so many of Student's deviations to each side.</summary>
    internal static ConfidenceInterval Around(double figure, double standardError, double confidence, long freedom)
    {
        double reach = StudentKernel.Quantile((1 + confidence) / 2, freedom) * standardError;
        return new(figure - reach, figure + reach);
    }

    internal static double Checked(double confidence) => confidence is > 0 and < 1
        ? confidence
        : throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "More than 0 and less than 1: write 0.95 for 95 %.");
}
