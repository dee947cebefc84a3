namespace SacrificialTape.Quantities;

/// <summary>The order of a value type for callers that know no type, such as the comparisons of F# and of lists of objects.</summary>
internal static class UntypedOrder
{
    /// <summary>Null comes first; a value of another type has no place in the order.</summary>
    /// <exception cref="ArgumentException">The other one is of another type.</exception>
    internal static int Of<T>(T one, object? other)
        where T : struct, IComparable<T> => other switch
        {
            null => 1,
            T same => one.CompareTo(same),
            _ => throw new ArgumentException($"A {other.GetType().Name} cannot be compared with a {typeof(T).Name}.", nameof(other)),
        };
}
