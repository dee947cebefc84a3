namespace SacrificialTape.Documents;

/// <summary>Which of some names a mistyped one was most likely meant for.</summary>
internal static class NearestName
{
    // Longer names are compared by their beginnings only, so that a hostile one costs no more than a slip.
    private const int Compared = 80;

    /// <summary>The name that takes the fewest changes of a letter (Levenshtein 1966); the first of several.</summary>
    internal static string To(string name, IEnumerable<string> names) =>
        names.MinBy(candidate => Changes(Start(name), Start(candidate))) ?? string.Empty;

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
