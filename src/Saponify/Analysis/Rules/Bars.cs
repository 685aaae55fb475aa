using Saponify.Internals;

namespace Saponify.Analysis.Rules;

/// <summary>What the rules on scores have in common. They describe a bar; no band is right or wrong.</summary>
internal static class Bars
{
    /// <summary>Why there is no bar to describe, or null.</summary>
    internal static string? WhyNoBar(FormulaFacts facts) => facts.Setup.Form is null ? "it is not said what is to come out" : facts.Setup.Form != ProductForm.Bar ? "no bar is to come out"
        : facts.HasFat ? null : "no listed fat takes up lye";

    internal static string? WhyNoScores(FormulaFacts facts) => WhyNoBar(facts) ?? (facts.Scores.WhyNotScored is { } why ? $"the bar is not scored: {why}" : null);

    /// <summary>True when the score lies in its lowest band.</summary>
    internal static bool IsLowest(Score score) => score.Band == score.Definition.Bands[0];

    /// <summary>A score as part of a message.</summary>
    internal static string Show(Score score) => $"{score.Definition.Name} {Text.Fixed(score.Value, 0)} of 100, {score.Band}";

    /// <summary>The fat that brings the most points.</summary>
    internal static FatPoints Most(Score score) => score.ByFat.OrderByDescending(f => f.Points).ThenBy(f => f.What, StringComparer.Ordinal).First();

    /// <summary>The fat that makes up most of the acids.</summary>
    internal static FatPoints Largest(Score score) => score.ByFat.OrderByDescending(f => f.Share.DecimalFractions).ThenBy(f => f.What, StringComparer.Ordinal).First();
}
