using System.Runtime.CompilerServices;

namespace SacrificialTape.Quantities;

/// <summary>Callers hand over whatever they have; inside, lists do not change.</summary>
internal static class Lists
{
    /// <summary>The items as a list that cannot change; one that is such a list already is taken as it is.</summary>
    /// <exception cref="ArgumentNullException">There is no collection.</exception>
    /// <exception cref="ArgumentException">One of the items is null.</exception>
    internal static ValueList<T> Listed<T>(this IEnumerable<T> items, [CallerArgumentExpression(nameof(items))] string? parameter = null)
    {
        ArgumentNullException.ThrowIfNull(items, parameter);
        if (items is ValueList<T> list)
        {
            return list;
        }

        T[] copy = [.. items];
        int missing = Array.FindIndex(copy, static item => item is null);
        return missing < 0 ? ValueList<T>.Owning(copy) : throw new ArgumentException($"Item {missing} is null.", parameter);
    }
}
