using System.Globalization;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>
/// How two inputs go together: the correlation of the two normal numbers behind them. The rank correlation of their values is
/// a little smaller, (6/pi) asin(r/2).
/// </summary>
public sealed record InputCorrelation
{
    /// <summary>States it.</summary>
    /// <param name="one">Name of an input.</param>
    /// <param name="other">Name of another.</param>
    /// <param name="coefficient">More than -1, less than 1.</param>
    /// <exception cref="ArgumentException">A name is empty, or both are the same.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is outside its range.</exception>
    public InputCorrelation(string one, string other, double coefficient)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(one);
        ArgumentException.ThrowIfNullOrWhiteSpace(other);
        if (one == other)
        {
            throw new ArgumentException($"Input '{one}' with itself: name another.", nameof(other));
        }

        this.One = one;
        this.Other = other;
        this.Coefficient = coefficient is > -1 and < 1
            ? coefficient
            : throw new ArgumentOutOfRangeException(nameof(coefficient), coefficient, "More than -1 and less than 1.");
    }

    /// <summary>Name of an input.</summary>
    public string One { get; }

    /// <summary>Name of another.</summary>
    public string Other { get; }

    /// <summary>The correlation of the normal numbers behind them.</summary>
    public double Coefficient { get; }

    /// <summary>Names and coefficient as invariant text.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{this.One} with {this.Other}: {this.Coefficient:G6}");
}
