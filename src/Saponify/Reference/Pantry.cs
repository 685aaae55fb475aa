using System.Collections.Frozen;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;

namespace Saponify;

/// <summary>
/// The reference tables: fats, liquids, additives and their sources. Look-up is by id or alias, in upper or lower case.
/// Immutable, thread-safe; <see cref="Reference"/> is loaded once, on first use.
/// </summary>
public sealed class Pantry
{
    private static readonly Lazy<Pantry> s_reference = new(LoadEmbedded);

    private readonly FrozenDictionary<string, Fat> _fats;
    private readonly FrozenDictionary<string, Liquid> _liquids;
    private readonly FrozenDictionary<string, Additive> _additives;
    private readonly FrozenDictionary<string, Source> _sources;

    internal Pantry(string version, Dictionary<string, Source> sources, Dictionary<string, Fat> fats, Dictionary<string, Liquid> liquids, Dictionary<string, Additive> additives)
    {
        Version = version;
        Fats = Sorted(fats);
        Liquids = Sorted(liquids);
        Additives = Sorted(additives);
        Sources = Sorted(sources);
        _fats = Names(Fats, f => f.Id, f => f.Aliases);
        _liquids = Names(Liquids, l => l.Id, l => l.Aliases);
        _additives = Names(Additives, a => a.Id, a => a.Aliases);
        _sources = sources.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>The tables that come with the library.</summary>
    public static Pantry Reference => s_reference.Value;

    /// <summary>Version of the tables, for example <c>2026.11</c>; formula files state it.</summary>
    public string Version { get; }

    /// <summary>All fats, sorted by id.</summary>
    public ValueList<Fat> Fats { get; }

    /// <summary>All liquids, sorted by id.</summary>
    public ValueList<Liquid> Liquids { get; }

    /// <summary>All additives, sorted by id.</summary>
    public ValueList<Additive> Additives { get; }

    /// <summary>All sources, sorted by key.</summary>
    public ValueList<Source> Sources { get; }

    /// <summary>The fat with this id or alias.</summary>
    /// <param name="idOrAlias">For example <c>olive-oil</c> or <c>corn oil</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names the nearest.</exception>
    public Fat Fat(string idOrAlias) => Get(_fats, idOrAlias, "fat");

    /// <summary>The liquid with this id or alias.</summary>
    /// <param name="idOrAlias">For example <c>milk-goat</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names the nearest.</exception>
    public Liquid Liquid(string idOrAlias) => Get(_liquids, idOrAlias, "liquid");

    /// <summary>The additive with this id or alias.</summary>
    /// <param name="idOrAlias">For example <c>citric-acid-monohydrate</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names the nearest.</exception>
    public Additive Additive(string idOrAlias) => Get(_additives, idOrAlias, "additive");

    /// <summary>The source with this key.</summary>
    /// <param name="key">As figures name it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="key"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public Source Source(string key) => Get(_sources, key, "source");

    /// <summary>Looks for a fat.</summary>
    /// <param name="idOrAlias">Id or alias.</param>
    /// <param name="fat">The fat, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    public bool TryGetFat(string idOrAlias, [NotNullWhen(true)] out Fat? fat) => _fats.TryGetValue(idOrAlias, out fat);

    /// <summary>Looks for a liquid.</summary>
    /// <param name="idOrAlias">Id or alias.</param>
    /// <param name="liquid">The liquid, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    public bool TryGetLiquid(string idOrAlias, [NotNullWhen(true)] out Liquid? liquid) => _liquids.TryGetValue(idOrAlias, out liquid);

    /// <summary>Looks for an additive.</summary>
    /// <param name="idOrAlias">Id or alias.</param>
    /// <param name="additive">The additive, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    public bool TryGetAdditive(string idOrAlias, [NotNullWhen(true)] out Additive? additive) => _additives.TryGetValue(idOrAlias, out additive);

    /// <summary>The ids nearest to a misspelt fat, best first; at most three, none when nothing is near.</summary>
    internal ValueList<string> NearestFats(string name) => Nearest.To(name, _fats.Keys, k => _fats[k].Id);

    internal ValueList<string> NearestLiquids(string name) => Nearest.To(name, _liquids.Keys, k => _liquids[k].Id);

    internal ValueList<string> NearestAdditives(string name) => Nearest.To(name, _additives.Keys, k => _additives[k].Id);

    private static Pantry LoadEmbedded()
    {
        Assembly assembly = typeof(Pantry).Assembly;
        Stream Open(string name) => assembly.GetManifestResourceStream("Saponify.data." + name) ?? throw new InvalidDataException($"The library lacks its table {name}.");
        using StreamReader version = new(Open("version.txt"));
        return new PantryLoader(Open).Load(version.ReadToEnd().Trim());
    }

    private static ValueList<T> Sorted<T>(Dictionary<string, T> table) where T : IEquatable<T> =>
        [.. table.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Value)];

    private static FrozenDictionary<string, T> Names<T>(ValueList<T> materials, Func<T, string> id, Func<T, ValueList<string>> aliases) where T : class, IEquatable<T>
    {
        Dictionary<string, T> names = new(StringComparer.OrdinalIgnoreCase);
        foreach (T material in materials)
            names.Add(id(material), material);
        foreach (T material in materials)
        {
            foreach (string alias in aliases(material))
                names.TryAdd(alias, material);
        }
        return names.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);
    }

    private static T Get<T>(FrozenDictionary<string, T> table, string name, string what)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (table.TryGetValue(name, out T? found))
            return found;
        ValueList<string> near = Nearest.To(name, table.Keys, k => k);
        throw new KeyNotFoundException($"The pantry has no {what} \"{name}\"." + (near.Count == 0 ? "" : $" Nearest: {string.Join(", ", near)}."));
    }
}
