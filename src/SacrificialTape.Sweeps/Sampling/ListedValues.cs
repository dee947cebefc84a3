using System.Globalization;
using System.Runtime.CompilerServices;
using SacrificialTape.Quantities;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Values of a list: a grid takes each, a draw one of them with equal chance.</summary>
public sealed record ListedValues : InputValues
{
    /// <summary>States them.</summary>
    /// <param name="values">At least one finite number, in the order in which a grid takes them.</param>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite.</exception>
    [OverloadResolutionPriority(1)]
    public ListedValues(params ReadOnlySpan<double> values)
    {
        if (values.IsEmpty)
        {
            throw new ArgumentException("At least one value.", nameof(values));
        }

        foreach (double value in values)
        {
            _ = Finite(value, nameof(values));
        }

        this.Values = [.. values];
    }

    /// <summary>States them, from a list or a sequence.</summary>
    /// <param name="values">At least one finite number, in the order in which a grid takes them.</param>
    /// <exception cref="ArgumentException">There is none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite.</exception>
    public ListedValues(IEnumerable<double> values)
        : this(Listed(values, nameof(values)))
    {
    }

    /// <summary>The values.</summary>
    public ValueList<double> Values { get; }

    /// <inheritdoc/>
    public override int? Levels => this.Values.Count;

    internal override double Level(int level) => this.Values[level];

    internal override double[] Numbers => [.. this.Values];

    internal override void Draw(Span<double> shares)
    {
        foreach (ref double share in shares)
        {
            share = this.Values[Math.Min((int)(share * this.Values.Count), this.Values.Count - 1)];
        }
    }

    /// <summary>How many there are, as invariant text.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"one of {this.Values.Count} values");
}
