using System.Collections;
using System.Runtime.CompilerServices;

namespace SacrificialTape.Quantities;

/// <summary>A list that cannot change and that is equal to another when its items are, in the same order.</summary>
/// <typeparam name="T">What it holds.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public sealed class ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[] items;

    /// <summary>Copies the items: what the caller does to his collection afterwards does not reach the list.</summary>
    /// <param name="items">The items, none of them null.</param>
    /// <exception cref="ArgumentNullException">The collection is null.</exception>
    /// <exception cref="ArgumentException">One of the items is null.</exception>
    public ValueList(IEnumerable<T> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        this.items = [.. items];
        int missing = Array.FindIndex(this.items, static item => item is null);
        if (missing >= 0)
        {
            throw new ArgumentException($"Item {missing} is null.", nameof(items));
        }
    }

    // For arrays that nobody else holds: taken as they are.
    private ValueList(T[] own) => this.items = own;

    /// <summary>The list without items.</summary>
#pragma warning disable CA1000 // An empty list of a given item type is what the word says.
    public static ValueList<T> Empty { get; } = new([]);
#pragma warning restore CA1000

    internal ReadOnlySpan<T> AsSpan() => this.items;

    internal static ValueList<T> Owning(T[] items) => new(items);

    /// <inheritdoc/>
    public int Count => this.items.Length;

    /// <inheritdoc/>
    public T this[int index] => this.items[index];

    /// <inheritdoc/>
    public bool Equals(ValueList<T>? other) =>
        other is not null && this.items.AsSpan().SequenceEqual(other.items, EqualityComparer<T>.Default);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => this.Equals(obj as ValueList<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (T item in this.items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)this.items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => this.GetEnumerator();
}
