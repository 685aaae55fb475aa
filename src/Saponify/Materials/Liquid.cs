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
    /// <remarks>Equal to the row <c>water</c> of the reference tables. Source of its density: water-density-table, 20 °C.</remarks>
    public static Liquid Water { get; } = new("water", "Water", Contents.PureWater)
    {
        Density = UnitsNet.Density.FromGramsPerMilliliter(0.9982),
        Aliases = ["distilled water", "deionised water", "plain water", "water-distilled"],
        Origin = "mineral",
        Evidence = Saponify.Evidence.Computed,
        Sources = ["computed", "water-density-table"],
        Provenance =
        [
            Pure("acid", 0), Pure("alcohol", 0), Pure("ash", 0),
            new("density", 0.9982, 0.9982, "g/mL", "20 degC", ["water-density-table"], "20 degC", Saponify.Evidence.Handbook, null),
            Pure("fat", 0), Pure("fibre", 0), Pure("protein", 0), Pure("sugar", 0), Pure("water", 100),
        ],
        Note = "EU name from memory: Aqua.",
    };

    /// <summary>Short name for look-up and files.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Name { get; }

    /// <summary>What is in it, by mass.</summary>
    public Contents Contents { get; }

    /// <summary>Where the composition is stated when it is that of a label and not the table's; null for the liquid in general.</summary>
    public string? LabelSource { get; private init; }

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

    /// <summary>
    /// The same liquid with the composition that its own label states. The label says how much; kinds of fat and acid stay those of this
    /// liquid, and so do the ranges of fat and acid where the label says nothing else: a label states one value and no range.
    /// </summary>
    /// <param name="source">Where it is stated, for example <c>carton of 12 March</c>; not blank.</param>
    /// <param name="contents">All parts; start from <see cref="Contents"/> of this liquid for those that the label leaves out.</param>
    /// <exception cref="ArgumentException">A blank source, or parts that exceed 100 %.</exception>
    /// <exception cref="ArgumentNullException">A null argument.</exception>
    public Liquid WithLabel(string source, Contents contents)
    {
        Guard.Text(source, "The source of a label");
        ArgumentNullException.ThrowIfNull(contents);
        if (!(contents.Total <= Contents.MostInAll))
            throw new ArgumentException($"The parts of {Name} add up to {Text.Number(contents.Total * 100)} %; more than 100 % can't be in it.", nameof(contents));
        bool sameFat = contents.FatFraction == Contents.FatFraction, sameAcid = contents.AcidFraction == Contents.AcidFraction;
        return new(Id, Name, contents with
        {
            FatKind = Contents.FatKind,
            LeastFat = sameFat ? Contents.LeastFat : null,
            MostFat = sameFat ? Contents.MostFat : null,
            AcidKind = Contents.AcidKind,
            LeastAcid = sameAcid ? Contents.LeastAcid : null,
            MostAcid = sameAcid ? Contents.MostAcid : null,
        })
        {
            LabelSource = source,
            Density = Density,
            Aliases = Aliases,
            Allergen = Allergen,
            Origin = Origin,
            Inci = Inci,
            Sources = [source],
            Note = Note,
        };
    }

    /// <summary>The name.</summary>
    public override string ToString() => Name;

    private static SourcedFigure Pure(string part, double percent) => new(part, percent, percent, "%", "by mass", ["computed"], "", Saponify.Evidence.Computed, "by definition");
}
