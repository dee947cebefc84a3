namespace SacrificialTape.Sweeps.Sampling;

/// <summary>What values an input of a sweep takes.</summary>
public abstract record InputValues
{
    private protected InputValues()
    {
    }

    /// <summary>How many values a full grid takes; null where a grid cannot choose them.</summary>
    public virtual int? Levels => null;

    /// <summary>The value that a share of all draws lies at or below.</summary>
    /// <param name="share">More than 0, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside that range.</exception>
    public double At(double share) => share is > 0 and < 1
        ? this.Draw(share)
        : throw new ArgumentOutOfRangeException(nameof(share), share, "More than 0 and less than 1: write 0.05 for 5 %.");

    /// <summary>What kind of values, as a saved summary names it.</summary>
    internal virtual string Kind => this.GetType().Name;

    /// <summary>All numbers that make these values what they are, to the last digit.</summary>
    internal abstract double[] Numbers { get; }

    /// <summary>A value of the grid, from 0.</summary>
    internal virtual double Level(int level) => throw new NotSupportedException();

    /// <summary>Turns shares into values where they stand; a value has the same bits wherever its share stands.</summary>
    internal abstract void Draw(Span<double> shares);

    internal double Draw(double share)
    {
        this.Draw(new Span<double>(ref share));
        return share;
    }

    private protected static double[] Listed(IEnumerable<double> values, string parameter)
    {
        ArgumentNullException.ThrowIfNull(values, parameter);
        return [.. values];
    }

    private protected static double Finite(double value, string parameter) => double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(parameter, value, "A finite number.");

    private protected static double Above(double value, double low, string parameter) => double.IsFinite(value) && value > low
        ? value
        : throw new ArgumentOutOfRangeException(parameter, value, FormattableString.Invariant($"A finite number more than {low}."));
}
