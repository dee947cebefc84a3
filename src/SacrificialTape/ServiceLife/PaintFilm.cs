using SacrificialTape.Quantities;

namespace SacrificialTape.ServiceLife;

/// <summary>Paint over the tape: how long it would last by itself, as a range of the user's own.</summary>
/// <remarks>Life: more than zero; the latest end not before the earliest.</remarks>
public sealed record PaintFilm
{
    /// <summary>Describes paint.</summary>
    /// <param name="earliest">The earliest end of its life by itself, on bare steel.</param>
    /// <param name="latest">The latest end of its life by itself.</param>
    /// <param name="alkydNextToZinc">Whether the coat next to the zinc is an alkyd or oil paint.</param>
    /// <exception cref="ArgumentOutOfRangeException">A life is outside its range.</exception>
    public PaintFilm(Lifetime earliest, Lifetime latest, bool alkydNextToZinc = false)
    {
        if (!earliest.IsUnlimited)
        {
            AcceptedRange.Above(0, "a").Check(earliest.Years, nameof(earliest));
        }

        if (latest < earliest)
        {
            throw new ArgumentOutOfRangeException(nameof(latest), $"{latest} is before the earliest end, {earliest}.");
        }

        this.Earliest = earliest;
        this.Latest = latest;
        this.AlkydNextToZinc = alkydNextToZinc;
    }

    /// <summary>The earliest end of its life by itself.</summary>
    public Lifetime Earliest { get; }

    /// <summary>The latest end of its life by itself.</summary>
    public Lifetime Latest { get; }

    /// <summary>Whether the coat next to the zinc is an alkyd or oil paint.</summary>
    public bool AlkydNextToZinc { get; }

    /// <summary>The range in a few words.</summary>
    public override string ToString() => $"{this.Earliest} to {this.Latest}{(this.AlkydNextToZinc ? ", alkyd next to zinc" : string.Empty)}";
}
