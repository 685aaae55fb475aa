namespace Saponify;

/// <summary>The rows of all tables, by id, as a pantry is made of them.</summary>
internal sealed record PantryTables
{
    internal required string Version { get; init; }

    internal required Dictionary<string, Source> Sources { get; init; }

    internal required Dictionary<string, Fat> Fats { get; init; }

    internal required Dictionary<string, Acid> Acids { get; init; }

    internal required Dictionary<string, Liquid> Liquids { get; init; }

    internal required Dictionary<string, Additive> Additives { get; init; }

    internal required Dictionary<string, FragranceAllergen> FragranceAllergens { get; init; }

    internal required Dictionary<string, EssentialOil> EssentialOils { get; init; }
}
