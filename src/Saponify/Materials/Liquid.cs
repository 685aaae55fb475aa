using Saponify.Internals;
using UnitsNet;

namespace Saponify;

/// <summary>
/// A liquid that is poured into soap: water, milk, cream, plant drink, juice. It counts as the water, fat, sugar, protein, acid and
/// alcohol in it, not as its mass. Immutable, thread-safe; equality by content.
/// </summary>
public sealed record Liquid : IMaterial
{
    /// <summary>Makes a liquid of your own, for example from the label of a carton.</summary>
    /// <param name="id">Short name for look-up and files; not blank.</param>
    /// <param name="name">Name for people; not blank.</param>
    /// <param name="contents">What is in it. If the parts exceed 100 %, sugar gives way, then protein.</param>
    /// <exception cref="ArgumentException">A blank text, or parts that exceed 100 % without sugar and protein.</exception>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public Liquid(string id, string name, Contents contents)
    {
        ArgumentNullException.ThrowIfNull(contents);
        Id = LineId.Check(id, "The id of a liquid");
        Name = Guard.Text(name, "The name of a liquid");
        Contents = contents.Closed(name, nameof(contents));
        WaterPerGram = Contents.WaterFraction;
        FatHydroxidePerGram = Contents.FatHydroxidePerGram;
        AcidHydroxidePerGram = Contents.AcidHydroxidePerGram;
    }

    internal double WaterPerGram { get; }

    internal double FatHydroxidePerGram { get; }

    internal double AcidHydroxidePerGram { get; }

    /// <summary>Plain water: distilled or softened.</summary>
    public static Liquid Water { get; } = new("water", "Water", Contents.PureWater) { Density = UnitsNet.Density.FromGramsPerMilliliter(0.9982) };

    /// <summary>Short name for look-up and files.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Name { get; }

    /// <summary>What is in it, by mass.</summary>
    public Contents Contents { get; }

    /// <summary>Density near room temperature, or null when not known: then it can be weighed but not poured by volume.</summary>
    public Density? Density { get; init; }

    /// <summary>Other names that the look-up knows.</summary>
    public ValueList<string> Aliases { get; init; }

    /// <summary>Allergen class, for example <c>milk</c>; null when none is listed.</summary>
    public string? Allergen { get; init; }

    /// <summary>Where it comes from: <c>plant</c>, <c>animal</c>, <c>mineral</c>, <c>synthetic</c>; null when not stated.</summary>
    public string? Origin { get; init; }

    /// <summary>True when it comes from plants or minerals or is synthetic; false when it comes from animals or insects or no origin is stated.</summary>
    public bool IsVegan => Origins.IsVegan(Origin);

    /// <summary>Its name in the inventory of cosmetic ingredients, or null; never coined.</summary>
    public string? Inci { get; init; }

    /// <summary>Weakest evidence among its figures; null for one of your own making.</summary>
    public Evidence? Evidence { get; init; }

    /// <summary>Keys of the sources of its figures.</summary>
    public ValueList<string> Sources { get; init; }

    /// <summary>Every figure as published, one row a figure, with source and place; empty for one of your own making.</summary>
    public ValueList<SourcedFigure> Provenance { get; init; }

    /// <summary>What to know about it, or null.</summary>
    public string? Note { get; init; }

    IEnumerable<string> INamed.ListedNames => Inci is null ? [] : [Inci];

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
