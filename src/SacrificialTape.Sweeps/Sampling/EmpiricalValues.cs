using System.Globalization;
using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Values as they were measured: each is drawn with equal chance, none between them.</summary>
public sealed record EmpiricalValues : DistributedValues
{
    private readonly double[] sorted;

    /// <summary>States the measurements.</summary>
    /// <param name="measured">At least two finite numbers.</param>
    /// <exception cref="ArgumentException">There are fewer than two.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite.</exception>
    [OverloadResolutionPriority(1)]
    public EmpiricalValues(params ReadOnlySpan<double> measured)
    {
        if (measured.Length < 2)
        {
            throw new ArgumentException("At least two measurements.", nameof(measured));
        }

        foreach (double value in measured)
        {
            _ = Finite(value, nameof(measured));
        }

        this.sorted = measured.ToArray();
        Array.Sort(this.sorted);
    }

    /// <summary>States the measurements, from a list or a sequence.</summary>
    /// <param name="measured">At least two finite numbers.</param>
    /// <exception cref="ArgumentException">There are fewer than two.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite.</exception>
    public EmpiricalValues(IEnumerable<double> measured)
        : this(Listed(measured, nameof(measured)))
    {
    }

    /// <summary>The measurements, the least first.</summary>
    public ValueList<double> Measured => [.. this.sorted];

    /// <inheritdoc/>
    public override double Below(double value)
    {
        if (double.IsNaN(value))
        {
            return value;
        }

        int low = 0;
        int high = this.sorted.Length;
        while (low < high)
        {
            int middle = low + ((high - low) / 2);
            (low, high) = this.sorted[middle] <= value ? (middle + 1, high) : (low, middle);
        }

        return (double)low / this.sorted.Length;
    }

    /// <inheritdoc/>
    public bool Equals(EmpiricalValues? other) => other is not null && this.sorted.AsSpan().SequenceEqual(other.sorted);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(this.sorted.Length, this.sorted[0], this.sorted[^1]);

    internal override double[] Numbers => [.. this.sorted];

    internal override void Draw(Span<double> shares)
    {
        foreach (ref double share in shares)
        {
            share = this.sorted[Math.Min((int)(share * this.sorted.Length), this.sorted.Length - 1)];
        }
    }

    /// <summary>How many there are, as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture, $"{this.sorted.Length} measurements, {this.sorted[0]:G6} to {this.sorted[^1]:G6}");
}
