using Saponify.Internals;

namespace Saponify.Analysis.Rules;

/// <summary>Fixes that make the batch larger or smaller, by factors short enough that the masses stay readable.</summary>
internal static class Scaling
{
    /// <summary>Everything times a factor.</summary>
    internal static FixOffer By(string key, FormulaFacts facts, double factor, string purpose = "") =>
        new(key, $"Make a batch of {Text.Fixed(facts.ListedGrams * factor, 0)} g of fats{purpose}", FixEffect.KeepsProduct, f => f.ScaledBy(factor));

    /// <summary>A factor cut down to four digits.</summary>
    internal static double Down(double factor) => Math.Floor(factor * Digits(factor)) / Digits(factor);

    /// <summary>A factor raised to four digits.</summary>
    internal static double Up(double factor) => Math.Ceiling(factor * Digits(factor)) / Digits(factor);

    private static double Digits(double factor) => Math.Pow(10, 3 - Math.Floor(Math.Log10(factor)));
}
