namespace Saponify.Analysis.Rules;

/// <summary>Scents against what their certificates allow.</summary>
internal static class Scents
{
    internal static bool IsScent(AdditivePortion portion) => portion.Additive.Kind == AdditiveKind.Fragrance;

    /// <summary>The lowest limit stated for an additive; null when none is.</summary>
    internal static FragranceLimit? Limit(BatchSetup setup, Additive additive)
    {
        FragranceLimit? lowest = null;
        foreach (FragranceLimit limit in setup.FragranceLimits)
        {
            if (string.Equals(limit.Additive, additive.Id, StringComparison.OrdinalIgnoreCase) && !(limit.Fraction >= lowest?.Fraction))
                lowest = limit;
        }
        return lowest;
    }

    /// <summary>Grams of finished soap when so much of it is water: the batch less its water and alcohol, as a dry bar holds a scent at its strongest.</summary>
    internal static double ProductGrams(FormulaFacts facts, double water)
    {
        double dry = facts.Balance.BatchGrams - facts.Balance.AllWaterGrams;
        foreach (Containing part in facts.Parts)
            dry -= part.Grams * part.Contents.AlcoholFraction;
        return Math.Min(facts.Balance.BatchGrams, dry / (1 - water));
    }

    /// <summary>Grams of an additive, all its lines together.</summary>
    internal static double Grams(FormulaFacts facts, string id)
    {
        double grams = 0;
        foreach (AdditivePortion portion in facts.Formula.Additives)
            grams += portion.Additive.Id == id ? portion.GramsFor(facts.ListedGrams) : 0;
        return grams;
    }

    /// <summary>Index of the first line of each scent.</summary>
    internal static IEnumerable<int> FirstLines(Formula formula)
    {
        for (int i = 0; i < formula.Additives.Count; i++)
        {
            string id = formula.Additives[i].Additive.Id;
            if (IsScent(formula.Additives[i]) && !formula.Additives.Take(i).Any(p => p.Additive.Id == id))
                yield return i;
        }
    }
}
