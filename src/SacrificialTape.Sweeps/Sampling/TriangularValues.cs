using System.Globalization;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>A least, a likeliest and a greatest value with straight lines between.</summary>
public sealed record TriangularValues : DistributedValues
{
    /// <summary>States the three.</summary>
    /// <param name="low">The least value.</param>
    /// <param name="likeliest">The likeliest, from the least to the greatest.</param>
    /// <param name="high">The greatest, more than the least.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or they do not lie in that order.</exception>
    public TriangularValues(double low, double likeliest, double high)
    {
        this.Low = Finite(low, nameof(low));
        this.High = Above(high, low, nameof(high));
        this.Likeliest = likeliest >= low && likeliest <= high
            ? likeliest
            : throw new ArgumentOutOfRangeException(
                nameof(likeliest), likeliest, FormattableString.Invariant($"At least {low} and at most {high}."));
    }

    /// <summary>The least value.</summary>
    public double Low { get; }

    /// <summary>The likeliest value.</summary>
    public double Likeliest { get; }

    /// <summary>The greatest value.</summary>
    public double High { get; }

    /// <inheritdoc/>
    public override double Below(double value)
    {
        if (double.IsNaN(value))
        {
            return value;
        }

        if (value <= this.Low || value >= this.High)
        {
            return value <= this.Low ? 0 : 1;
        }

        double width = this.High - this.Low;
        return value < this.Likeliest
            ? (value - this.Low) * (value - this.Low) / (width * (this.Likeliest - this.Low))
            : 1 - ((this.High - value) * (this.High - value) / (width * (this.High - this.Likeliest)));
    }

    internal override double[] Numbers => [this.Low, this.Likeliest, this.High];

    internal override void Draw(Span<double> shares)
    {
        double width = this.High - this.Low;
        foreach (ref double share in shares)
        {
            share = share * width < this.Likeliest - this.Low
                ? this.Low + Math.Sqrt(share * width * (this.Likeliest - this.Low))
                : this.High - Math.Sqrt((1 - share) * width * (this.High - this.Likeliest));
        }
    }

    /// <summary>The three as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"triangular, {this.Low:G6} to {this.High:G6}, likeliest {this.Likeliest:G6}");
}
