using Saponify.Internals;
using UnitsNet;

namespace Saponify.Analysis.Rules;

/// <summary>Changes of the liquids that several rules offer.</summary>
internal static class LiquidFixes
{
    /// <summary>Water in the jug per g of pure alkali after a lye liquid was split; comfortable by common practice, no source.</summary>
    private const double SplitWater = 1.4;

    /// <summary>The formula with its lye liquid frozen.</summary>
    internal static FixOffer Freeze(string rule, Liquid liquid) => new($"{rule}.Freeze", $"Freeze {liquid.Name} to -18 °C before the alkali goes in", FixEffect.KeepsProduct,
        f => f with { Liquids = f.Liquids.DissolvingInFrozen(liquid, Temperature.FromDegreesCelsius(-18)) });

    /// <summary>Dissolves in plain water and holds back as much of the present lye liquid as the water rule leaves room for; nothing when it leaves none.</summary>
    internal static FixOffer[] Split(string rule, FormulaFacts facts)
    {
        LiquidPlan plan = facts.Formula.Liquids;
        Liquid liquid = plan.LyeLiquid.Liquid;
        LyeBalance balance = facts.Balance;
        double spare = balance.DissolvingWaterGrams - (SplitWater * balance.PureAlkaliGrams);
        double held = Math.Floor(liquid.WaterPerGram > 0 ? spare / liquid.WaterPerGram : 0);
        if (!(held >= 1 && held <= Guard.LargestGrams))
            return [];
        return [new($"{rule}.Split", $"Dissolve in water and hold back {Text.Number(held)} g of {liquid.Name}", FixEffect.ChangesProduct, f => f with { Liquids = Split(plan, liquid, held, SplitWater * balance.PureAlkaliGrams) })];
    }

    /// <summary>More or less lye liquid for a lye of this strength over all water; nothing when no amount gives it.</summary>
    internal static FixOffer[] Strength(string rule, Formula formula, double ofAllWater) =>
        new LyeSolver(formula).LiquidForConcentration(ofAllWater) is { } grams and > 0 and <= Guard.LargestGrams && LyeFixes.WithLyeLiquid(formula, grams) is { } plan
            ? [new($"{rule}.Strength", $"Plan for a lye of about {Text.Number(ofAllWater * 100)} % over all water", FixEffect.ChangesProduct, f => f with { Liquids = plan })]
            : [];

    private static LiquidPlan Split(LiquidPlan plan, Liquid liquid, double held, double water)
    {
        LiquidPlan split = plan.Rule == WaterRule.WeighedLyeLiquid ? LiquidPlan.WeighedLyeLiquid(Liquid.Water.Weighing(Mass.FromGrams(Math.Ceiling(water)))) : plan.DissolvingIn(Liquid.Water);
        return split.HoldingBack([.. plan.HeldBack, liquid.Weighing(Mass.FromGrams(held))]);
    }
}
