namespace SacrificialTape.Sweeps.Answers;

/// <summary>
/// What is kept of an answer while its rows stream by. Two summaries of parts join to the summary of the whole, bit for bit and
/// in any order.
/// </summary>
/// <remarks>Not for use from several threads at once: give each its own and join them.</remarks>
public abstract class Summary
{
    private protected Summary()
    {
    }

    /// <summary>Takes consecutive rows.</summary>
    /// <param name="firstRow">The first row, counted in the whole sweep from 0.</param>
    /// <param name="answers">The answers of the rows.</param>
    public abstract void Add(long firstRow, ReadOnlySpan<double> answers);

    /// <summary>Joins another summary of other rows of the same sweep to this one.</summary>
    /// <param name="other">The other one; it stays as it is.</param>
    /// <exception cref="ArgumentException">It is of another kind, or was set up otherwise.</exception>
    public abstract void Join(Summary other);

    /// <summary>A summary set up like this one that has taken nothing.</summary>
    public abstract Summary Fresh();

    private protected static T Same<T>(Summary other)
        where T : Summary
    {
        ArgumentNullException.ThrowIfNull(other);
        return other as T ?? throw new ArgumentException($"A {other.GetType().Name} cannot join a {typeof(T).Name}.", nameof(other));
    }
}
