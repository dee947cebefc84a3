using System.Globalization;

namespace SacrificialTape.Sweeps.Sampling;

/// <summary>Values from a lowest to a highest: a grid takes levels with both ends among them, a draw any value between.</summary>
public sealed record RangedValues : InputValues
{
    private readonly int? levels;

    /// <summary>States a range.</summary>
    /// <param name="low">The lowest; more than 0 where spaced by ratios.</param>
    /// <param name="high">The highest, more than the lowest.</param>
    /// <param name="levels">How many values a grid takes, at least 2; left out, the range is for draws, and a grid refuses it.</param>
    /// <param name="spacing">Whether differences or ratios are equal.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public RangedValues(double low, double high, int? levels = null, RangeSpacing spacing = RangeSpacing.Linear)
    {
        if (!Enum.IsDefined(spacing))
        {
            throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "Linear or Logarithmic.");
        }

        this.Low = spacing == RangeSpacing.Logarithmic ? Above(low, 0, nameof(low)) : Finite(low, nameof(low));
        this.High = Above(high, low, nameof(high));
        this.levels = levels is null or >= 2 ? levels : throw new ArgumentOutOfRangeException(nameof(levels), levels, "At least 2.");
        this.Spacing = spacing;
    }

    /// <summary>The lowest value.</summary>
    public double Low { get; }

    /// <summary>The highest value.</summary>
    public double High { get; }

    /// <summary>Whether differences or ratios are equal.</summary>
    public RangeSpacing Spacing { get; }

    /// <inheritdoc/>
    public override int? Levels => this.levels;

    internal override double[] Numbers => [this.Low, this.High, this.levels ?? 0, (int)this.Spacing];

    internal override double Level(int level) =>
        level == 0 ? this.Low : level == this.levels - 1 ? this.High : this.Draw((double)level / (this.levels!.Value - 1));

    internal override void Draw(Span<double> shares)
    {
        if (this.Spacing == RangeSpacing.Linear)
        {
            foreach (ref double share in shares)
            {
                share = ((1 - share) * this.Low) + (share * this.High);
            }

            return;
        }

        double ratio = Math.Log(this.High / this.Low);
        foreach (ref double share in shares)
        {
            share = this.Low * Math.Exp(share * ratio);
        }
    }

    /// <summary>The range as invariant text.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{this.Low:G6} to {this.High:G6}{(this.Spacing == RangeSpacing.Linear ? string.Empty : ", by ratios")}");
}
