using System.Globalization;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>One value in every row.</summary>
public sealed record FixedValue : InputValues
{
    /// <summary>States it.</summary>
    /// <param name="value">A finite number.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public FixedValue(double value) => this.Value = Finite(value, nameof(value));

    /// <summary>The value.</summary>
    public double Value { get; }

    /// <inheritdoc/>
    public override int? Levels => 1;

    internal override double Level(int level) => this.Value;

    internal override double[] Numbers => [this.Value];

    internal override void Draw(Span<double> shares) => shares.Fill(this.Value);

    /// <summary>The value as invariant text.</summary>
    public override string ToString() => this.Value.ToString("G6", CultureInfo.InvariantCulture);
}
