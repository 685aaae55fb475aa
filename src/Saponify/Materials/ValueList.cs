using System.Collections;
using System.Runtime.CompilerServices;

namespace Saponify;

/// <summary>
/// An immutable list that is equal to another one when both hold equal items in the same order. Write it as a collection
/// expression: <c>[a, b, ..rest]</c>. <c>default</c> is the empty list. Thread-safe.
/// </summary>
/// <typeparam name="T">The type of the items; they are compared by their own content equality.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public readonly struct ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>> where T : IEquatable<T>
{
    private readonly T[]? _items;

    internal ValueList(T[] items) => _items = items;

    private T[] Items => _items ?? [];

    /// <summary>The number of items.</summary>
    public int Count => Items.Length;

    /// <summary>The item at a place, counted from 0.</summary>
    /// <param name="index">The place, from 0 to <see cref="Count"/> - 1.</param>
    /// <exception cref="IndexOutOfRangeException">There is no such place.</exception>
    public T this[int index] => Items[index];

    /// <summary>The items as a span: no copy, no allocation.</summary>
    public ReadOnlySpan<T> AsSpan() => _items;

    /// <summary>True when both lists hold equal items in the same order.</summary>
    /// <param name="other">The other list.</param>
    public bool Equals(ValueList<T> other) => ReferenceEquals(_items, other._items) || AsSpan().SequenceEqual(other.AsSpan());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ValueList<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        HashCode hash = default;
        foreach (T item in Items)
            hash.Add(item);
        return hash.ToHashCode();
    }

    /// <summary>True when both lists hold equal items in the same order.</summary>
    /// <param name="left">One list.</param>
    /// <param name="right">The other list.</param>
    public static bool operator ==(ValueList<T> left, ValueList<T> right) => left.Equals(right);

    /// <summary>True when the lists differ.</summary>
    /// <param name="left">One list.</param>
    /// <param name="right">The other list.</param>
    public static bool operator !=(ValueList<T> left, ValueList<T> right) => !left.Equals(right);

    /// <summary>Walks through the items without allocating.</summary>
    public Enumerator GetEnumerator() => new(Items);

    IEnumerator<T> IEnumerable<T>.GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => Items.GetEnumerator();

    /// <summary>Walks through a <see cref="ValueList{T}"/>.</summary>
    public struct Enumerator
    {
        private readonly T[] _items;
        private int _next;

        internal Enumerator(T[] items) => _items = items;

        /// <summary>The item the walk has reached.</summary>
        public readonly T Current => _items[_next - 1];

        /// <summary>Goes to the next item; false at the end.</summary>
        public bool MoveNext() => ++_next <= _items.Length;
    }
}

/// <summary>Makes <see cref="ValueList{T}"/>s.</summary>
public static class ValueList
{
    /// <summary>A list of these items. Collection expressions call it: <c>ValueList&lt;int&gt; list = [1, 2];</c></summary>
    /// <typeparam name="T">The type of the items.</typeparam>
    /// <param name="items">The items; they are copied.</param>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) where T : IEquatable<T> => items.IsEmpty ? default : new(items.ToArray());

    /// <summary>A list of these items.</summary>
    /// <typeparam name="T">The type of the items.</typeparam>
    /// <param name="items">The items; they are copied.</param>
    /// <exception cref="ArgumentNullException"><paramref name="items"/> is null.</exception>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) where T : IEquatable<T>
    {
        ArgumentNullException.ThrowIfNull(items);
        return Create<T>(items.ToArray());
    }
}
