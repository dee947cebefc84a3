using SacrificialTape.Quantities;

namespace SacrificialTape.Wrapping;

/// <summary>What is done at the two ends of a spiral.</summary>
/// <remarks>Level turns at each end: 0 to 10; 0 means that the slanted ends run past the pipe and are trimmed flush.</remarks>
public sealed record SpiralEnds
{
    private SpiralEnds(int levelTurns) => this.LevelTurnsAtEachEnd = levelTurns;

    /// <summary>The slanted ends run past the end of the pipe and are trimmed flush.</summary>
    public static SpiralEnds TrimmedFlush { get; } = new(0);

    /// <summary>Level turns on one another at each end; 0 when trimmed flush.</summary>
    public int LevelTurnsAtEachEnd { get; }

    /// <summary>The spiral ends square under level turns, cut as separate pieces.</summary>
    /// <param name="atEachEnd">How many on one another at each end, 1 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static SpiralEnds LevelTurns(int atEachEnd = 1)
    {
        AcceptedRange.Between(1, 10, "turns").Check(atEachEnd);
        return new(atEachEnd);
    }
}
