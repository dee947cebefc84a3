using SacrificialTape.Quantities;

namespace SacrificialTape.Documents;

/// <summary>How large a document may be before a reader refuses it: a hostile file must not hang or exhaust the program.</summary>
/// <remarks>
/// The default bounds are for a person who waits for a file of his own. A step takes about a third of a microsecond, so
/// that 100 million of them keep one core busy for about 33 s, and a file of 64 MiB takes several times its size in memory
/// while it is read. Whoever reads files of strangers, a web host for instance, takes <see cref="WebHost"/> or bounds of his own.
/// </remarks>
public sealed record DocumentLimits
{
    private const long UsualSteps = 100_000_000;

    /// <summary>Sets limits.</summary>
    /// <param name="bytes">Largest document, 1 to 1,073,741,824 bytes.</param>
    /// <param name="depth">Deepest nesting, 8 to 64.</param>
    /// <param name="faults">Most faults collected before reading ends, 1 to 10,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    public DocumentLimits(int bytes, int depth, int faults)
        : this(bytes, depth, faults, UsualSteps)
    {
    }

    /// <summary>Sets limits.</summary>
    /// <param name="bytes">Largest document, 1 to 1,073,741,824 bytes.</param>
    /// <param name="depth">Deepest nesting, 8 to 64.</param>
    /// <param name="faults">Most faults collected before reading ends, 1 to 10,000.</param>
    /// <param name="steps">Most steps of counting that a document may ask for, 1,000 to 1,000,000,000,000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    public DocumentLimits(int bytes, int depth, int faults, long steps)
    {
        AcceptedRange.Between(1, 1 << 30, "bytes").Check(bytes);
        AcceptedRange.Between(8, 64, "levels").Check(depth);
        AcceptedRange.Between(1, 10_000, "faults").Check(faults);
        AcceptedRange.Between(1000, 1e12, "steps").Check(steps);
        this.Steps = steps;
        this.Bytes = bytes;
        this.Depth = depth;
        this.Faults = faults;
    }

    /// <summary>64 MiB, 16 levels, 100 faults, 100 million steps.</summary>
    public static DocumentLimits Default { get; } = new(64 << 20, 16, 100);

    /// <summary>
    /// For files of strangers: 1 MiB, 16 levels, 20 faults, 1 million steps, which take about a third of a second. A job of
    /// a thousand lines of pipe fits.
    /// </summary>
    public static DocumentLimits WebHost { get; } = new(1 << 20, 16, 20, 1_000_000);

    /// <summary>Largest document, in bytes.</summary>
    public int Bytes { get; }

    /// <summary>Deepest nesting.</summary>
    public int Depth { get; }

    /// <summary>Most faults collected before reading ends.</summary>
    public int Faults { get; }

    /// <summary>
    /// Most steps of counting that what is read may ask for: strips laid one by one, openings and windows held against
    /// each other. A short file can state a long row. A step takes about a third of a microsecond.
    /// </summary>
    public long Steps { get; }

    /// <summary>The limits in a few words.</summary>
    public override string ToString() => $"{this.Bytes} bytes, {this.Depth} levels, {this.Faults} faults, {this.Steps} steps";
}
