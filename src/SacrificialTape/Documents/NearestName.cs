namespace SacrificialTape.Documents;

/// <summary>Which of some names a mistyped one was most likely meant for.</summary>
internal static class NearestName
{
    // Longer names are compared by their beginnings only, so that a hostile one costs no more than a slip.
    private const int Compared = 80;

    // A hint that lists more than these would bury the fault.
    private const int Listed = 8;

    /// <summary>
    /// The name that takes the fewest changes of a letter (Levenshtein 1966); the first of several. Null where none is near:
    /// more than one letter in three would have to change, and none of the two names holds the other.
    /// </summary>
    internal static string? To(string name, IEnumerable<string> names) => Near(name, names).FirstOrDefault();

    /// <summary>A sentence, with a space before it, that names the nearest; where none is near the few there are, or nothing.</summary>
    internal static string Hint(string name, IReadOnlyCollection<string> names) => To(name, names) is { } near
        ? $" Nearest is '{near}'."
        : names.Count is > 0 and <= Listed ? $" Known are {string.Join(", ", names.Select(static one => $"'{one}'"))}." : string.Empty;

    /// <summary>All names from the nearest to the farthest, however far.</summary>
    internal static IEnumerable<string> InOrder(string name, IEnumerable<string> names) => names.OrderBy(candidate => Changes(Start(name), Start(candidate)));

    private static IEnumerable<string> Near(string name, IEnumerable<string> names) =>
        from candidate in names
        let changes = Changes(Start(name), Start(candidate))
        where changes <= Math.Max(1, Math.Min(name.Length, Compared) / 3) || Holds(candidate, name) || Holds(name, candidate)
        orderby changes
        select candidate;

    // 'lap' for 'true lap'; a letter or two stand in almost every name.
    private static bool Holds(string name, string part) => part.Length > 2 && name.Contains(part, StringComparison.OrdinalIgnoreCase);

    private static ReadOnlySpan<char> Start(string name) => name.AsSpan(0, Math.Min(name.Length, Compared));

    private static int Changes(ReadOnlySpan<char> from, ReadOnlySpan<char> to)
    {
        Span<int> row = stackalloc int[Compared + 1];
        for (int j = 0; j <= to.Length; j++)
        {
            row[j] = j;
        }

        for (int i = 1; i <= from.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.Length; j++)
            {
                int replaced = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[to.Length];
    }
}
