using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// A fat, oil, fatty acid or wax, with the saponification value that the lye is computed from.
/// Take it from a pantry (<c>Pantry.Reference.Fat("olive-oil")</c>) or make your own. Immutable, thread-safe; equality by content.
/// </summary>
/// <remarks>
/// The value used errs on the side of less lye: it is the lower of the middle of the published range and the value computed from
/// the fatty acids; a wax counts by the low end of its acid value; a lot's own value beats everything.
/// </remarks>
public sealed record Fat : IMaterial
{
    /// <summary>Makes a fat of your own.</summary>
    /// <param name="id">Short name for look-up and files, for example <c>olive-oil</c>; not blank.</param>
    /// <param name="name">Name for people; not blank.</param>
    /// <param name="fatClass">What it is chemically.</param>
    /// <param name="figures">Its published figures.</param>
    /// <exception cref="ArgumentException">A blank text, or a profile without sources.</exception>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fatClass"/> is none of the three.</exception>
    public Fat(string id, string name, FatClass fatClass, FatFigures figures)
        : this(id, name, fatClass, figures, null)
    {
    }

    /// <summary>A fat of which only the saponification value is known, from a certificate or a label.</summary>
    /// <param name="id">Short name; not blank.</param>
    /// <param name="name">Name for people; not blank.</param>
    /// <param name="saponification">Its own saponification value.</param>
    /// <param name="source">Where that comes from; not blank.</param>
    /// <exception cref="ArgumentException">A blank text.</exception>
    public static Fat Own(string id, string name, SaponificationValue saponification, string source) => new(id, name, FatClass.Triglyceride, new()
    {
        Saponification = new(saponification, Saponify.Evidence.Measured, [Guard.Text(source, "The source of a figure")]) { Low = saponification, High = saponification, IsOwn = true },
    });

    private Fat(string id, string name, FatClass fatClass, FatFigures figures, Lot? lot)
    {
        ArgumentNullException.ThrowIfNull(figures);
        if (figures.Profile is not null && figures.ProfileSources.Count == 0)
            throw new ArgumentException("A profile needs its sources.", nameof(figures));
        Id = LineId.Check(id, "The id of a fat");
        Name = Guard.Text(name, "The name of a fat");
        Class = Guard.Known(fatClass, "The class of a fat");
        Figures = figures;
        Lot = lot;
        Saponification = UsedSaponification.Of(fatClass, figures, lot);
        HydroxidePerGram = Saponification?.Value.MolPerGram ?? 0;
    }

    /// <summary>mol of hydroxide that one gram takes up; 0 when no usable value is on file.</summary>
    internal double HydroxidePerGram { get; }

    /// <summary>Short name for look-up and files.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Name { get; }

    /// <summary>What it is chemically.</summary>
    public FatClass Class { get; }

    /// <summary>The published figures.</summary>
    public FatFigures Figures { get; }

    /// <summary>The lot this is, or null for the fat in general.</summary>
    public Lot? Lot { get; }

    /// <summary>
    /// The saponification value that lye is computed from, with the range a lot may have. Null when none is fit for it: then
    /// a formula with this fat can't be planned until the lot's own value is given.
    /// </summary>
    public Figure<SaponificationValue>? Saponification { get; }

    /// <summary>Fatty acids, or null when not known.</summary>
    public FattyAcidProfile? Profile => Figures.Profile;

    /// <summary>Other names that the look-up knows.</summary>
    public ValueList<string> Aliases { get; init; }

    /// <summary>Allergen class of the material, for example <c>milk</c> or <c>tree-nut</c>; null when none is listed.</summary>
    public string? Allergen { get; init; }

    /// <summary>Where it comes from: <c>plant</c>, <c>animal</c>, <c>insect</c>, <c>mineral</c> or <c>synthetic</c>; null when not stated.</summary>
    public string? Origin { get; init; }

    /// <summary>True when it comes from plants or minerals or is synthetic; false when it comes from animals or insects or no origin is stated.</summary>
    public bool IsVegan => Origins.IsVegan(Origin);

    /// <summary>Name of the fat in the inventory of cosmetic ingredients, or null; never coined.</summary>
    public string? Inci { get; init; }

    /// <summary>Name of its sodium soap in the inventory of cosmetic ingredients, or null; never coined.</summary>
    public string? InciSodiumSoap { get; init; }

    /// <summary>Name of its potassium soap in the inventory of cosmetic ingredients, or null; never coined.</summary>
    public string? InciPotassiumSoap { get; init; }

    /// <summary>
    /// Evidence of the saponification value used; where there is none, the weakest among its figures; null without figures.
    /// </summary>
    public Evidence? Evidence => Saponification?.Evidence ?? (Provenance.Count == 0 ? null : Provenance.Max(f => f.Evidence));

    /// <summary>True when a figure of it is the user's own: a lot's value or a figure of an own table.</summary>
    public bool IsOwn => Lot is not null || Figures.Saponification is { IsOwn: true } || Provenance.Any(f => f.IsOwn);

    /// <summary>Every figure as published, one row a figure, own ones first, with source and place; empty for a fat of your own making.</summary>
    public ValueList<SourcedFigure> Provenance { get; init; }

    /// <summary>What to know about it, or null.</summary>
    public string? Note { get; init; }

    /// <summary>The same fat as one delivery of it; the lot's own saponification value, if it has one, is used from here on.</summary>
    /// <param name="lot">The lot.</param>
    /// <exception cref="ArgumentNullException"><paramref name="lot"/> is null.</exception>
    public Fat WithLot(Lot lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return new(Id, Name, Class, Figures, lot)
        {
            Aliases = Aliases,
            Allergen = Allergen,
            Origin = Origin,
            Inci = Inci,
            InciSodiumSoap = InciSodiumSoap,
            InciPotassiumSoap = InciPotassiumSoap,
            Provenance = Provenance,
            Note = Note,
        };
    }

    IEnumerable<string> INamed.ListedNames => Inci is null ? [] : [Inci];

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
