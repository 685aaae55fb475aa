using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis.Rules;

/// <summary>Changes of the alkali and the water that several rules offer.</summary>
internal static class LyeFixes
{
    /// <summary>The superfat that a fix goes to where the formula states none: common practice, no source.</summary>
    internal const double UsualSuperfat = 0.05;

    /// <summary>The formula with another superfat of all fat: the target changed, or the weighed alkali scaled to it.</summary>
    internal static Formula WithSuperfat(Formula formula, double superfat)
    {
        if (formula.Alkali is SuperfatTarget target)
            return formula with { Alkali = (target with { Superfat = Stored.ToRatio(superfat) }).OfAllFat() };
        WeighedAlkali weighed = (WeighedAlkali)formula.Alkali;
        LyeBalance balance = formula.Balance();
        double wanted = balance.AcidHydroxide + ((1 - superfat) * balance.AllFatHydroxide), factor = wanted / weighed.Hydroxide;
        return formula with { Alkali = AlkaliPlan.Weighed([.. weighed.Alkalis.Select(a => a with { Mass = Cut(a.Mass, factor) })]) };
    }

    /// <summary>Offers another superfat; nothing when it would not work, as without any alkali to scale.</summary>
    internal static FixOffer[] Superfat(Formula formula, string key, double superfat) =>
        formula.Alkali is WeighedAlkali { Hydroxide: <= 0 }
            ? []
            : [new(key, $"{(formula.Alkali is SuperfatTarget ? "Plan" : "Weigh the alkali")} for a superfat of {AmountWriter.Percent(superfat)} of all fat", FixEffect.ChangesProduct, f => WithSuperfat(f, superfat))];

    /// <summary>The lowest superfat in steps of half a point at which something holds, from the present one up to 30 %; null when none does.</summary>
    internal static double? LowestSuperfat(Formula formula, double from, Func<Formula, bool> holds)
    {
        for (int half = Math.Max(0, (int)Math.Floor(from * 200) + 1); half <= 60; half++)
        {
            if (holds(WithSuperfat(formula, half / 200.0)))
                return half / 200.0;
        }
        return null;
    }

    /// <summary>The formula with so much lye liquid, by the water rule that it has; null when the rule can't say it.</summary>
    internal static LiquidPlan? WithLyeLiquid(Formula formula, double grams)
    {
        LiquidPlan plan = formula.Liquids;
        LiquidPlan weighed = LiquidPlan.WeighedLyeLiquid(plan.LyeLiquid.Liquid.Weighing(Mass.FromGrams(grams)).WithTemperature(plan.LyeLiquid.StoredTemperature, plan.LyeLiquid.IsFrozen)).HoldingBack([.. plan.HeldBack]);
        if (plan.Rule == WaterRule.WeighedLyeLiquid)
            return weighed;
        LyeBalance balance = (formula with { Liquids = weighed }).Balance();
        double water = balance.AllWaterGrams, pure = balance.PureAlkaliGrams;
        double concentration = Math.Floor(pure / (pure + water) * 1000) / 1000, parts = Math.Ceiling(water / pure * 100) / 100, ofFats = formula.ListedGrams > 0 ? Math.Ceiling(water / formula.ListedGrams * 1000) / 1000 : 0;
        LiquidPlan? changed = plan.Rule switch
        {
            WaterRule.LyeConcentration => concentration is >= 0.01 and <= 0.95 ? LiquidPlan.LyeConcentration(Stored.ToRatio(concentration)) : null,
            WaterRule.WaterToAlkali => parts is >= 0.05 and <= 100 ? LiquidPlan.WaterToAlkali(Stored.ToRatio(parts)) : null,
            WaterRule.WaterToFats => ofFats is > 0 and <= 10 ? LiquidPlan.WaterToFats(Stored.ToRatio(ofFats)) : null,
            _ => water is > 0 and <= Guard.LargestGrams ? LiquidPlan.TotalWater(Mass.FromGrams(Math.Ceiling(water))) : null,
        };
        return changed is null ? null : plan.WithRuleOf(changed);
    }

    private static Mass Cut(Mass mass, double factor) => Mass.From(Math.Floor(mass.Value * factor * 1000) / 1000, mass.Unit);
}
