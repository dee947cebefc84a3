namespace SacrificialTape.Quantities;

/// <summary>Builds a <see cref="ValueList{T}"/> from a collection expression.</summary>
public static class ValueList
{
    /// <summary>Makes a list of the items.</summary>
    /// <typeparam name="T">What it holds.</typeparam>
    /// <param name="items">The items, none of them null.</param>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());
}
