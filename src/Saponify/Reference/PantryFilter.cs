using Saponify.Internals;

namespace Saponify;

/// <summary>What materials must be to be found; what is not set, all pass. Immutable; equality by content.</summary>
public sealed record PantryFilter
{
    /// <summary>Words that must all stand in an id, a name, an alias or a name of the inventory; without case and accents. Null or blank lets all pass.</summary>
    public string? Text { get; init; }

    /// <summary>Class of fat; liquids and additives pass whatever it is.</summary>
    public FatClass? Class { get; init; }

    /// <summary>True for materials from plants or minerals and synthetic ones only; what states no origin is left out.</summary>
    public bool VeganOnly { get; init; }

    /// <summary>Allergen classes that must not be listed for the material. It is a courtesy, no promise: traces and unlisted ones are not known.</summary>
    public ValueList<string> WithoutAllergens { get; init; }

    /// <summary>The weakest evidence that will do; what has no figures is left out. Null lets all pass.</summary>
    public Evidence? AtLeast { get; init; }

    /// <summary>True for fats with a saponification value fit for lye only; liquids and additives pass.</summary>
    public bool FitForLye { get; init; }

    internal bool Passes(IMaterial material) =>
        !(VeganOnly && !material.IsVegan)
        && !(material.Allergen is { } allergen && WithoutAllergens.AsSpan().Contains(allergen))
        && !(AtLeast is { } least && !(material.Evidence <= least))
        && (material is not Fat fat || ((Class is null || fat.Class == Class) && !(FitForLye && fat.Saponification is null)))
        && HasText(material);

    private bool HasText(IMaterial material)
    {
        if (string.IsNullOrWhiteSpace(Text))
            return true;
        IEnumerable<string> names = [material.Id, material.Name, .. material.Aliases, .. material.ListedNames, .. material is Fat fat ? new[] { fat.InciSodiumSoap, fat.InciPotassiumSoap }.OfType<string>() : []];
        string all = " " + string.Join(' ', names.Select(FoldedName.Of));
        return FoldedName.Of(Text).Split(' ', StringSplitOptions.RemoveEmptyEntries).All(word => all.Contains(word, StringComparison.Ordinal));
    }
}
