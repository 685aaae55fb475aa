namespace Saponify.Analysis.Rules;

/// <summary>What the circumstances exclude. One ingredient, one finding: by its origin, else by its allergen class, else by its name.</summary>
internal static class Exclusions
{
    internal const string Animal = "animal";

    internal static bool ExcludesAnimals(BatchSetup setup) => setup.Excluded.Any(e => Ingredient.Same(Animal, e));

    internal static string? WhyNone(FormulaFacts facts) => facts.Setup.Excluded.Count == 0 ? "nothing is excluded" : null;

    internal static bool ByOrigin(BatchSetup setup, Ingredient ingredient) => ingredient.IsAnimal && ExcludesAnimals(setup);

    /// <summary>The excluded class that it belongs to, by itself or by the fat inside; null when none is.</summary>
    internal static string? ByAllergen(BatchSetup setup, Ingredient ingredient) =>
        ByOrigin(setup, ingredient) ? null : ingredient.Allergens.FirstOrDefault(a => setup.Excluded.Any(e => Ingredient.Same(a, e)));

    internal static bool ByName(BatchSetup setup, Ingredient ingredient) => !ByOrigin(setup, ingredient) && ByAllergen(setup, ingredient) is null && setup.Excluded.Any(e => ingredient.HasName(e) || ingredient.Holds(e));
}
