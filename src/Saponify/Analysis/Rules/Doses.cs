namespace Saponify.Analysis.Rules;

/// <summary>Masses of additives as shares of the listed fats.</summary>
internal static class Doses
{
    internal static double OfFats(FormulaFacts facts, Func<Additive, bool> which)
    {
        double grams = 0;
        foreach (AdditivePortion portion in facts.Formula.Additives)
            grams += which(portion.Additive) ? portion.GramsFor(facts.ListedGrams) : 0;
        return facts.ListedGrams > 0 ? grams / facts.ListedGrams : 0;
    }

    internal static double Scent(FormulaFacts facts) => OfFats(facts, a => a.Kind == AdditiveKind.Fragrance);

    internal static double Solids(FormulaFacts facts) => OfFats(facts, IsSolid);

    internal static double CommonSalt(FormulaFacts facts) => OfFats(facts, IsCommonSalt);

    internal static double Clay(FormulaFacts facts) => OfFats(facts, a => a.Kind == AdditiveKind.Clay);

    /// <summary>Table salt and sea salt, which harden and push soap out of solution.</summary>
    internal static bool IsCommonSalt(Additive additive) => additive.Id is "sodium-chloride" or "sea-salt";

    /// <summary>What stays in the bar as grains: no soap, and not dissolved.</summary>
    internal static bool IsSolid(Additive additive) => additive.Kind is AdditiveKind.Clay or AdditiveKind.Colorant or AdditiveKind.Exfoliant or AdditiveKind.Botanical;
}
