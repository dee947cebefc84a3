using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>The usable share of a foil as a spread: nobody knows when uneven loss first perforates it.</summary>
/// <remarks>Range: each share more than 0, at most 1, in rising order. No source gives it for thin foil.</remarks>
public sealed record UncertainUtilisation
{
    private UncertainUtilisation(Utilisation lowest, Utilisation likeliest, Utilisation highest, bool even)
    {
        this.Lowest = lowest;
        this.Likeliest = likeliest;
        this.Highest = highest;
        this.IsEven = even;
    }

    /// <summary>The lowest share that can be.</summary>
    public Utilisation Lowest { get; }

    /// <summary>The likeliest share; of an even spread the middle.</summary>
    public Utilisation Likeliest { get; }

    /// <summary>The highest share that can be.</summary>
    public Utilisation Highest { get; }

    /// <summary>Whether all shares between the ends are as likely as one another.</summary>
    public bool IsEven { get; }

    internal DensityPiece[] Pieces => this.IsEven
        ? DensityPiece.Uniform(this.Lowest.Fraction, this.Highest.Fraction)
        : DensityPiece.Triangular(this.Lowest.Fraction, this.Likeliest.Fraction, this.Highest.Fraction);

    /// <summary>A share without spread.</summary>
    /// <param name="share">The share.</param>
    public static UncertainUtilisation Exactly(Utilisation share) => new(share, share, share, true);

    /// <summary>A share of which every value between two ends is as likely as any other.</summary>
    /// <param name="lowest">The lowest.</param>
    /// <param name="highest">The highest, at least the lowest.</param>
    /// <exception cref="ArgumentOutOfRangeException">The highest is below the lowest.</exception>
    public static UncertainUtilisation Uniform(Utilisation lowest, Utilisation highest)
    {
        AcceptedRange.Between(lowest.Fraction, 1, string.Empty).Noting("the lowest share").Check(highest.Fraction, nameof(highest));
        return new(lowest, Utilisation.FromFraction((lowest.Fraction + highest.Fraction) / 2), highest, true);
    }

    /// <summary>A share with a likeliest value, and a likelihood that falls straight to nothing at two ends.</summary>
    /// <param name="lowest">The lowest.</param>
    /// <param name="likeliest">The likeliest, at least the lowest.</param>
    /// <param name="highest">The highest, at least the likeliest.</param>
    /// <exception cref="ArgumentOutOfRangeException">The three are not in rising order.</exception>
    public static UncertainUtilisation Triangular(Utilisation lowest, Utilisation likeliest, Utilisation highest)
    {
        AcceptedRange.Between(lowest.Fraction, 1, string.Empty).Noting("the lowest share").Check(likeliest.Fraction, nameof(likeliest));
        AcceptedRange.Between(likeliest.Fraction, 1, string.Empty).Noting("the likeliest share").Check(highest.Fraction, nameof(highest));
        return new(lowest, likeliest, highest, false);
    }
}
