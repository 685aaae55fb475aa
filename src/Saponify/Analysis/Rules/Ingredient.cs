namespace Saponify.Analysis.Rules;

/// <summary>A material of a formula as exclusions see it: where, what, the fat inside it, and how to do without it.</summary>
internal sealed record Ingredient(FormulaPath Path, string Id, string Name, ValueList<string> Aliases, string? Allergen, string? Origin, Fat? Inside, FixOffer Without)
{
    internal bool IsOfEitherOrigin => MayBePlant(Id);

    internal bool IsAnimal => (Origin is "animal" or "insect" && !MayBePlant(Id)) || (Inside is { Origin: "animal" or "insect" } fat && !MayBePlant(fat.Id));

    /// <summary>Its own class and that of the fat inside, which is another one in a creamer of milk and nut oil.</summary>
    internal IEnumerable<string> Allergens => new[] { Allergen, Inside?.Allergen }.OfType<string>();

    internal bool HasName(string word) => IsNamed(Id, Name, Aliases, word);

    internal bool Holds(string word) => Inside is { } fat && IsNamed(fat.Id, fat.Name, fat.Aliases, word);

    internal static bool Same(string? one, string other) => string.Equals(one, other.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>Every material with an amount, in the order of the formula. Water is nothing to exclude.</summary>
    internal static IEnumerable<Ingredient> All(FormulaFacts facts)
    {
        Formula formula = facts.Formula;
        for (int i = 0; i < formula.Fats.Count; i++)
        {
            int index = i;
            Fat fat = formula.Fats[i].Fat;
            if (formula.Fats[i].Grams > 0)
                yield return new(Places.Fat(formula, i), fat.Id, fat.Name, fat.Aliases, fat.Allergen, fat.Origin, null, LeaveOut(fat.Name, f => f with { Fats = Places.Without(f.Fats, index) }));
        }
        Liquid lye = formula.Liquids.LyeLiquid.Liquid;
        if (facts.Balance.LyeLiquidGrams > 0 && lye.Id != Liquid.Water.Id)
        {
            yield return new(FormulaPath.LyeLiquid, lye.Id, lye.Name, lye.Aliases, lye.Allergen, lye.Origin, lye.Contents.FatKind,
                new("Exclusions.Water", $"Dissolve in water, not in {lye.Name}", FixEffect.ChangesProduct, f => f with { Liquids = f.Liquids.DissolvingIn(Liquid.Water) }));
        }
        for (int i = 0; i < formula.Liquids.HeldBack.Count; i++)
        {
            int index = i;
            Liquid liquid = formula.Liquids.HeldBack[i].Liquid;
            if (formula.Liquids.HeldBack[i].Grams > 0)
                yield return new(Places.HeldBack(formula, i), liquid.Id, liquid.Name, liquid.Aliases, liquid.Allergen, liquid.Origin, liquid.Contents.FatKind,
                    LeaveOut(liquid.Name, f => f with { Liquids = f.Liquids with { HeldBack = Places.Without(f.Liquids.HeldBack, index) } }));
        }
        for (int i = 0; i < formula.Additives.Count; i++)
        {
            int index = i;
            Additive additive = formula.Additives[i].Additive;
            yield return new(Places.Additive(formula, i), additive.Id, additive.Name, additive.Aliases, additive.Allergen, additive.Origin, additive.Contents.FatKind,
                LeaveOut(additive.Name, f => f with { Additives = Places.Without(f.Additives, index) }));
        }
    }

    /// <summary>Fatty acids and glycerol are made from plant or animal fat; the tables take them as animal until the supplier says otherwise.</summary>
    private static bool MayBePlant(string id) => id is "glycerin" or "oleic-acid" or "palmitic-acid" or "stearic-acid-50" or "stearic-acid-70" or "stearic-acid-95";

    private static bool IsNamed(string id, string name, ValueList<string> aliases, string word) => Same(id, word) || Same(name, word) || aliases.Any(a => Same(a, word));

    private static FixOffer LeaveOut(string name, Func<Formula, Formula> without) => new("Exclusions.LeaveOut", $"Leave out {name}", FixEffect.ChangesProduct, without);
}
