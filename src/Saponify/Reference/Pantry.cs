using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using System.Text;
using Saponify.Internals;

namespace Saponify;

/// <summary>
/// The reference tables: fats, liquids, additives, acids, essential oils, fragrance allergens and the sources of all figures, with the
/// user's own rows on top where there are some (<see cref="With(string)"/>). Immutable, thread-safe; <see cref="Reference"/> is loaded once,
/// on first use.
/// </summary>
/// <remarks>
/// Look-up is by id, name, alias, and name in the inventory of cosmetic ingredients; without case, accents and apostrophes, and with hyphens
/// and blanks alike, in every culture. A name of the inventory that several rows share leads to none of them: the message lists them.
/// </remarks>
public sealed class Pantry
{
    private static readonly Lazy<Pantry> s_reference = new(LoadEmbedded);

    private readonly PantryTables _tables;
    private readonly NameIndex<Fat> _fats;
    private readonly NameIndex<Liquid> _liquids;
    private readonly NameIndex<Additive> _additives;
    private readonly NameIndex<Acid> _acids;
    private readonly NameIndex<EssentialOil> _oils;
    private readonly NameIndex<FragranceAllergen> _fragranceAllergens;
    private readonly NameIndex<Source> _sources;
    private readonly Lazy<ValueList<string>> _allergenClasses;

    internal Pantry(PantryTables tables)
    {
        _tables = tables;
        _fats = new("fat", tables.Fats);
        _liquids = new("liquid", tables.Liquids);
        _additives = new("additive", tables.Additives);
        _acids = new("acid", tables.Acids);
        _oils = new("essential oil", tables.EssentialOils);
        _fragranceAllergens = new("fragrance allergen", tables.FragranceAllergens);
        _sources = new("source", tables.Sources);
        _allergenClasses = new(() => [.. new SortedSet<string>(Materials().Select(m => m.Allergen).OfType<string>(), StringComparer.Ordinal)]);
    }

    /// <summary>The tables that come with the library.</summary>
    public static Pantry Reference => s_reference.Value;

    /// <summary>Version of the tables, for example <c>2026.11</c>, with <c>+own</c> behind it when rows of the user's own are on top; formula files state it.</summary>
    public string Version => _tables.Version;

    /// <summary>All fats, sorted by id.</summary>
    public ValueList<Fat> Fats => _fats.Rows;

    /// <summary>All liquids, sorted by id.</summary>
    public ValueList<Liquid> Liquids => _liquids.Rows;

    /// <summary>All additives, sorted by id.</summary>
    public ValueList<Additive> Additives => _additives.Rows;

    /// <summary>All acids that liquids and additives hold, sorted by id.</summary>
    public ValueList<Acid> Acids => _acids.Rows;

    /// <summary>All essential oils, sorted by id.</summary>
    public ValueList<EssentialOil> EssentialOils => _oils.Rows;

    /// <summary>All fragrance allergens, banned ones included, sorted by id.</summary>
    public ValueList<FragranceAllergen> FragranceAllergens => _fragranceAllergens.Rows;

    /// <summary>All sources, sorted by key.</summary>
    public ValueList<Source> Sources => _sources.Rows;

    /// <summary>Every allergen class that a fat, liquid or additive has, sorted, for example <c>milk</c> and <c>tree-nut</c>.</summary>
    public ValueList<string> AllergenClasses => _allergenClasses.Value;

    /// <summary>The fat with this name.</summary>
    /// <param name="idOrAlias">For example <c>olive-oil</c>, <c>corn oil</c> or <c>Olea Europaea Fruit Oil</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names the nearest.</exception>
    public Fat Fat(string idOrAlias) => _fats.Get(idOrAlias);

    /// <summary>The liquid with this name.</summary>
    /// <param name="idOrAlias">For example <c>milk-goat</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names the nearest.</exception>
    public Liquid Liquid(string idOrAlias) => _liquids.Get(idOrAlias);

    /// <summary>The additive with this name.</summary>
    /// <param name="idOrAlias">For example <c>citric-acid-monohydrate</c>; a CAS number on file will do too.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names the nearest.</exception>
    public Additive Additive(string idOrAlias) => _additives.Get(idOrAlias);

    /// <summary>The acid with this name, for a liquid or an additive of your own.</summary>
    /// <param name="idOrName">For example <c>lactic</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrName"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names the nearest.</exception>
    public Acid Acid(string idOrName) => _acids.Get(idOrName);

    /// <summary>The essential oil with this name.</summary>
    /// <param name="idOrAlias">For example <c>clove-bud</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none; the message names the nearest.</exception>
    public EssentialOil EssentialOil(string idOrAlias) => _oils.Get(idOrAlias);

    /// <summary>The fragrance allergen with this name or CAS number.</summary>
    /// <param name="nameOrCas">For example <c>linalool</c>, <c>78-70-6</c>, or a name that counts under an entry, such as <c>Geranial</c>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="nameOrCas"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none, or several plant oils share the number; the message names them.</exception>
    public FragranceAllergen FragranceAllergen(string nameOrCas) => _fragranceAllergens.Get(nameOrCas);

    /// <summary>The source with this key.</summary>
    /// <param name="key">As figures name it; for an own figure the text its owner gave.</param>
    /// <exception cref="ArgumentNullException"><paramref name="key"/> is null.</exception>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public Source Source(string key) => _sources.Get(key);

    /// <summary>Looks for a fat.</summary>
    /// <param name="idOrAlias">Id, name, alias or name of the inventory.</param>
    /// <param name="fat">The fat, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    public bool TryGetFat(string idOrAlias, [NotNullWhen(true)] out Fat? fat) => _fats.TryGet(idOrAlias, out fat);

    /// <summary>Looks for a liquid.</summary>
    /// <param name="idOrAlias">Id, name, alias or name of the inventory.</param>
    /// <param name="liquid">The liquid, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    public bool TryGetLiquid(string idOrAlias, [NotNullWhen(true)] out Liquid? liquid) => _liquids.TryGet(idOrAlias, out liquid);

    /// <summary>Looks for an additive.</summary>
    /// <param name="idOrAlias">Id, name, alias, name of the inventory or CAS number.</param>
    /// <param name="additive">The additive, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    public bool TryGetAdditive(string idOrAlias, [NotNullWhen(true)] out Additive? additive) => _additives.TryGet(idOrAlias, out additive);

    /// <summary>Looks for an essential oil.</summary>
    /// <param name="idOrAlias">Id, name, alias or name of the inventory.</param>
    /// <param name="oil">The oil, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="idOrAlias"/> is null.</exception>
    public bool TryGetEssentialOil(string idOrAlias, [NotNullWhen(true)] out EssentialOil? oil) => _oils.TryGet(idOrAlias, out oil);

    /// <summary>Looks for a fragrance allergen.</summary>
    /// <param name="nameOrCas">Id, name, CAS number, or a name that counts under an entry.</param>
    /// <param name="allergen">The allergen, or null when there is none.</param>
    /// <exception cref="ArgumentNullException"><paramref name="nameOrCas"/> is null.</exception>
    public bool TryGetFragranceAllergen(string nameOrCas, [NotNullWhen(true)] out FragranceAllergen? allergen) => _fragranceAllergens.TryGet(nameOrCas, out allergen);

    /// <summary>The fats that pass a filter, sorted by id.</summary>
    /// <param name="filter">What they must be.</param>
    /// <exception cref="ArgumentNullException"><paramref name="filter"/> is null.</exception>
    /// <exception cref="ArgumentException">The filter names an allergen class that no material here has.</exception>
    public ValueList<Fat> FindFats(PantryFilter filter) => Find(filter, Fats);

    /// <summary>The liquids that pass a filter, sorted by id.</summary>
    /// <param name="filter">What they must be.</param>
    /// <exception cref="ArgumentNullException"><paramref name="filter"/> is null.</exception>
    /// <exception cref="ArgumentException">The filter names an allergen class that no material here has.</exception>
    public ValueList<Liquid> FindLiquids(PantryFilter filter) => Find(filter, Liquids);

    /// <summary>The additives that pass a filter, sorted by id.</summary>
    /// <param name="filter">What they must be.</param>
    /// <exception cref="ArgumentNullException"><paramref name="filter"/> is null.</exception>
    /// <exception cref="ArgumentException">The filter names an allergen class that no material here has.</exception>
    public ValueList<Additive> FindAdditives(PantryFilter filter) => Find(filter, Additives);

    /// <summary>
    /// Everything about the materials with this name, for people: figures with ranges, evidence and sources, the fatty acids as bars, plain
    /// characters, lines ended by LF, invariant. A name may stand for several, such as an additive and a fragrance allergen; an allergen
    /// class lists what has it. Null when nothing has the name.
    /// </summary>
    /// <param name="name">Id, name, alias, name of the inventory, CAS number or allergen class.</param>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    public string? Describe(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return PantryText.Of(this, name);
    }

    /// <summary>This pantry with the rows of an own table of fats on top, such as a supplier's certificate. Faults are in the result, never exceptions.</summary>
    /// <param name="csv">The text of the table (not its path); the columns are explained at <see cref="PantryFile"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="csv"/> is null.</exception>
    public PantryFile With(string csv)
    {
        ArgumentNullException.ThrowIfNull(csv);
        return With(Encoding.UTF8.GetBytes(csv));
    }

    /// <summary>This pantry with the rows of an own table of fats on top, such as a supplier's certificate. Faults are in the result, never exceptions.</summary>
    /// <param name="utf8Csv">The bytes of the table, UTF-8, with or without a byte order mark, at most <see cref="PantryFile.LargestBytes"/>.</param>
    public PantryFile With(ReadOnlySpan<byte> utf8Csv) => PantryFile.Read(utf8Csv, this);

    /// <summary>This pantry with a fat of your own, which replaces one with the same id.</summary>
    /// <param name="fat">The fat, marked as own: made by <see cref="Saponify.Fat.Own"/> or <see cref="Saponify.Fat.WithLot"/>.</param>
    /// <exception cref="ArgumentNullException"><paramref name="fat"/> is null.</exception>
    /// <exception cref="ArgumentException">It is not marked as own.</exception>
    public Pantry With(Fat fat)
    {
        ArgumentNullException.ThrowIfNull(fat);
        if (!fat.IsOwn)
            throw new ArgumentException("A fat of your own must say so: make it by Fat.Own or WithLot.", nameof(fat));
        return new(_tables with { Version = OwnVersion, Fats = new(_tables.Fats, StringComparer.Ordinal) { [fat.Id] = fat } });
    }

    /// <summary>This pantry with a liquid of your own, for example from the label of a carton; it replaces one with the same id.</summary>
    /// <param name="liquid">The liquid; its <see cref="Liquid.Sources"/> say where its contents come from.</param>
    /// <exception cref="ArgumentNullException"><paramref name="liquid"/> is null.</exception>
    /// <exception cref="ArgumentException">It names no source.</exception>
    public Pantry With(Liquid liquid)
    {
        ArgumentNullException.ThrowIfNull(liquid);
        NeedsSource(liquid.Sources, nameof(liquid));
        return new(_tables with { Version = OwnVersion, Liquids = new(_tables.Liquids, StringComparer.Ordinal) { [liquid.Id] = liquid } });
    }

    /// <summary>This pantry with an additive of your own, which replaces one with the same id.</summary>
    /// <param name="additive">The additive; its <see cref="Additive.Sources"/> say where its contents come from.</param>
    /// <exception cref="ArgumentNullException"><paramref name="additive"/> is null.</exception>
    /// <exception cref="ArgumentException">It names no source.</exception>
    public Pantry With(Additive additive)
    {
        ArgumentNullException.ThrowIfNull(additive);
        NeedsSource(additive.Sources, nameof(additive));
        return new(_tables with { Version = OwnVersion, Additives = new(_tables.Additives, StringComparer.Ordinal) { [additive.Id] = additive } });
    }

    internal IEnumerable<IMaterial> Materials() => ((IEnumerable<IMaterial>)Fats).Concat(Liquids).Concat(Additives);

    internal Pantry With(Dictionary<string, Fat> fats, Dictionary<string, Source> sources) => new(_tables with { Version = OwnVersion, Fats = fats, Sources = sources });

    internal Dictionary<string, Fat> CopyOfFats() => new(_tables.Fats, StringComparer.Ordinal);

    internal Dictionary<string, Source> CopyOfSources() => new(_tables.Sources, StringComparer.Ordinal);

    internal static Pantry LoadEmbedded()
    {
        Assembly assembly = typeof(Pantry).Assembly;
        Stream Open(string name) => assembly.GetManifestResourceStream("Saponify.data." + name) ?? throw new InvalidDataException($"The library lacks its table {name}.");
        using StreamReader version = new(Open("version.txt"));
        return new(PantryLoader.Load(version.ReadToEnd().Trim(), Open));
    }

    /// <summary>The ids nearest to a misspelt name, best first; at most three, none when nothing is near.</summary>
    internal ValueList<string> NearestFats(string name) => _fats.Nearest(name);

    internal ValueList<string> NearestLiquids(string name) => _liquids.Nearest(name);

    internal ValueList<string> NearestAdditives(string name) => _additives.Nearest(name);

    /// <summary>The same over all tables.</summary>
    internal ValueList<string> NearestOfAll(string name) =>
        new Nearest(_fats.Names.Concat(_liquids.Names).Concat(_additives.Names).Concat(_oils.Names).Concat(_fragranceAllergens.Names)).To(name);

    private string OwnVersion => Version.EndsWith("+own", StringComparison.Ordinal) ? Version : Version + "+own";

    private static void NeedsSource(ValueList<string> sources, string argument)
    {
        if (sources.Count == 0 || sources.Any(string.IsNullOrWhiteSpace))
            throw new ArgumentException("Say where its contents come from: Sources must name at least one.", argument);
    }

    private ValueList<T> Find<T>(PantryFilter filter, ValueList<T> materials) where T : IMaterial, IEquatable<T>
    {
        ArgumentNullException.ThrowIfNull(filter);
        foreach (string allergen in filter.WithoutAllergens)
        {
            if (!AllergenClasses.AsSpan().Contains(allergen))
                throw new ArgumentException($"\"{allergen}\" is no allergen class here. Known: {string.Join(", ", AllergenClasses)}.", nameof(filter));
        }
        return [.. materials.Where(m => filter.Passes(m))];
    }
}
