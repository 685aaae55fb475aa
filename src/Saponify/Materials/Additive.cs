using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// Something that goes into soap beside fats, alkali and liquids: acid, salt, sugar, clay, colour, scent, botanicals. It counts by the
/// water, fat and acid in it. Immutable, thread-safe; equality by content.
/// </summary>
public sealed record Additive : IMaterial
{
    /// <summary>Makes an additive of your own.</summary>
    /// <param name="id">Short name for look-up and files; not blank.</param>
    /// <param name="name">Name for people; not blank.</param>
    /// <param name="kind">What it is there for.</param>
    /// <param name="usualStage">When it usually goes in; a portion may choose another stage.</param>
    /// <param name="contents">What is in it; <see cref="Contents.None"/> for something inert.</param>
    /// <exception cref="ArgumentException">A blank text, or parts that exceed 100 % without sugar and protein.</exception>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An unknown kind or stage.</exception>
    public Additive(string id, string name, AdditiveKind kind, Stage usualStage, Contents contents)
    {
        ArgumentNullException.ThrowIfNull(contents);
        Id = LineId.Check(id, "The id of an additive");
        Name = Guard.Text(name, "The name of an additive");
        Kind = Guard.Known(kind, "The kind of an additive");
        UsualStage = Guard.Known(usualStage, "The stage of an additive");
        Contents = contents.Closed(name, nameof(contents));
        WaterPerGram = Contents.WaterFraction;
        FatHydroxidePerGram = Contents.FatHydroxidePerGram;
        AcidHydroxidePerGram = Contents.AcidHydroxidePerGram;
    }

    internal double WaterPerGram { get; }

    internal double FatHydroxidePerGram { get; }

    internal double AcidHydroxidePerGram { get; }

    /// <summary>Short name for look-up and files.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Name { get; }

    /// <summary>What it is there for.</summary>
    public AdditiveKind Kind { get; }

    /// <summary>When it usually goes in.</summary>
    public Stage UsualStage { get; }

    /// <summary>What is in it, by mass.</summary>
    public Contents Contents { get; }

    /// <summary>Other names that the look-up knows.</summary>
    public ValueList<string> Aliases { get; init; }

    /// <summary>Allergen class, or null when none is listed.</summary>
    public string? Allergen { get; init; }

    /// <summary>Where it comes from: <c>plant</c>, <c>animal</c>, <c>mineral</c>, <c>synthetic</c>; null when not stated.</summary>
    public string? Origin { get; init; }

    /// <summary>True when it comes from plants or minerals or is synthetic; false when it comes from animals or insects or no origin is stated.</summary>
    public bool IsVegan => Origins.IsVegan(Origin);

    /// <summary>Its name in the inventory of cosmetic ingredients, or null; never coined.</summary>
    public string? Inci { get; init; }

    /// <summary>Formula of the pure substance, for example <c>C6H8O7.H2O</c>; null for a mixture.</summary>
    public string? Formula { get; init; }

    /// <summary>CAS number, or null when none is on file.</summary>
    public string? Cas { get; init; }

    /// <summary>Colour Index number of a colorant, five digits; null when it has none.</summary>
    public string? ColourIndex { get; init; }

    /// <summary>Usual dose as a share of the mass of the listed fats, from the trade's habits; null when none is on file.</summary>
    public Figure<Ratio>? UsualDose { get; init; }

    /// <summary>What to beware of, or null.</summary>
    public string? Caution { get; init; }

    /// <summary>Weakest evidence among its figures; null for one of your own making.</summary>
    public Evidence? Evidence { get; init; }

    /// <summary>Keys of the sources of its figures.</summary>
    public ValueList<string> Sources { get; init; }

    /// <summary>Every figure as published, one row a figure, with source and place; empty for one of your own making.</summary>
    public ValueList<SourcedFigure> Provenance { get; init; }

    /// <summary>What to know about it, or null.</summary>
    public string? Note { get; init; }

    IEnumerable<string> INamed.ListedNames => new[] { Inci, Cas }.OfType<string>();

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
