using System.Diagnostics.CodeAnalysis;
using Saponify.Internals;

namespace Saponify;

/// <summary>Rows of a table by everything they are called; the index is made on the first look-up. Thread-safe.</summary>
internal sealed class NameIndex<TRow> where TRow : class, INamed, IEquatable<TRow>
{
    private readonly string _what;
    private readonly Lazy<Dictionary<string, TRow?>> _byName;                       // null: several rows share this name
    private readonly Lazy<Nearest> _nearest;

    /// <param name="what">What the rows are, for messages.</param>
    /// <param name="rows">The rows; their ids differ.</param>
    internal NameIndex(string what, Dictionary<string, TRow> rows)
    {
        _what = what;
        TRow[] sorted = [.. rows.Values];
        Array.Sort(sorted, (a, b) => string.CompareOrdinal(a.Id, b.Id));
        Rows = new(sorted);
        _byName = new(() => ByName(sorted));
        _nearest = new(() => new(Names));
    }

    /// <summary>All rows, sorted by id.</summary>
    internal ValueList<TRow> Rows { get; }

    /// <summary>Every name that leads to one row, with the row's id.</summary>
    internal IEnumerable<(string Name, string Id)> Names => _byName.Value.Where(p => p.Value is not null).Select(p => (p.Key, p.Value!.Id));

    internal bool TryGet(string name, [NotNullWhen(true)] out TRow? row)
    {
        ArgumentNullException.ThrowIfNull(name);
        return _byName.Value.TryGetValue(name, out row) && row is not null;
    }

    internal TRow Get(string name)
    {
        if (TryGet(name, out TRow? found))
            return found;
        string shown = name.Length > 100 ? name[..100] + "..." : name;
        ValueList<string> sharing = Sharing(name);
        if (sharing.Count > 0)
            throw new KeyNotFoundException($"\"{shown}\" is the name of several: {string.Join(", ", sharing)}.");
        ValueList<string> near = Nearest(name);
        throw new KeyNotFoundException($"The pantry has no {_what} \"{shown}\"." + (near.Count == 0 ? "" : $" Nearest: {string.Join(", ", near)}."));
    }

    /// <summary>The ids of the rows that share a listed name; otherwise of those with the nearest names, best first, at most three.</summary>
    internal ValueList<string> Nearest(string name) => Sharing(name) is { Count: > 0 } sharing ? sharing : _nearest.Value.To(name);

    private ValueList<string> Sharing(string name) => _byName.Value.TryGetValue(name, out TRow? row) && row is null
        ? [.. Rows.Where(r => r.ListedNames.Contains(name, FoldedName.Comparer)).Select(r => r.Id)]
        : default;

    private static Dictionary<string, TRow?> ByName(TRow[] rows)
    {
        Dictionary<string, TRow?> byName = new(4 * rows.Length, FoldedName.Comparer);
        foreach (TRow row in rows)
            byName.TryAdd(row.Id, row);
        foreach (TRow row in rows)
        {
            byName.TryAdd(row.Name, row);
            foreach (string alias in row.Aliases)
                byName.TryAdd(alias, row);
        }
        Dictionary<string, TRow?> listed = new(FoldedName.Comparer);
        foreach (TRow row in rows)
        {
            foreach (string name in row.ListedNames)
            {
                if (!listed.TryAdd(name, row) && !ReferenceEquals(listed[name], row))
                    listed[name] = null;
            }
        }
        foreach ((string name, TRow? row) in listed)
            byName.TryAdd(name, row);
        return byName;
    }
}
