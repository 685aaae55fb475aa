using Saponify.Internals;

namespace Saponify;

/// <summary>Something that stands in the way of weighing a batch: then the plan offers nothing to weigh. Immutable; equality by content.</summary>
public sealed record Obstacle
{
    internal Obstacle(FormulaPath path, string reason) => (Path, Reason) = (path, reason);

    /// <summary>Where in the formula it lies.</summary>
    public FormulaPath Path { get; }

    /// <summary>What is wrong and what would be right; one sentence in English, invariant.</summary>
    public string Reason { get; }

    /// <summary>True when <see cref="Of"/> would find nothing; without allocating, and apart from the water rule.</summary>
    internal static bool None(Formula formula, in LyeBalance balance, AlkaliMix mix) =>
        !IsTooLarge(balance) && !LacksFat(balance) && !LacksWater(balance, mix) && !AcidExceeds(balance) && !formula.LacksSaponification;

    internal static ValueList<Obstacle> Of(Formula formula, in LyeBalance balance, bool ruleCanBeMet)
    {
        List<Obstacle> found = [];
        for (int i = 0; i < formula.Fats.Count; i++)
        {
            FatPortion portion = formula.Fats[i];
            if (portion.Fat.Saponification is null)
            {
                found.Add(new(FormulaPath.Fats.Item(i, portion.Line), $"{portion.Fat.Name} has no saponification value fit for computing lye; "
                    + "give the lot's own value from the supplier's certificate."));
            }
        }
        if (IsTooLarge(balance))
            found.Add(new(FormulaPath.Root, "The batch comes to more than 1e9 g, a thousand tonnes; look for a wrong unit."));
        if (LacksFat(balance))
            found.Add(new(FormulaPath.Fats, "No fat takes up lye; add a fat with a mass above 0."));
        if (AcidExceeds(balance))
        {
            found.Add(new(FormulaPath.Alkali, $"The acids take up {Text.Number(balance.AcidHydroxide)} mol of hydroxide, more than the {Text.Number(balance.Hydroxide)} mol of the alkali; "
                + "weigh more alkali or less acid."));
        }
        if (!ruleCanBeMet)
        {
            found.Add(new(FormulaPath.LyeLiquid, $"{formula.Liquids.LyeLiquid.Liquid.Name} can't meet the water rule: its fat and acid ask for more alkali than its water can hold; "
                + "dissolve the alkali in water and hold this liquid back."));
        }
        else if (balance.WaterShortGrams > 0)
        {
            found.Add(new(FormulaPath.Liquids, $"No liquid is left to dissolve the alkali in: held-back liquids, additives and the alkali itself bring {Text.Number(balance.WaterShortGrams)} g more water than the water rule asks for; "
                + "allow more water or hold back less."));
        }
        else if (LacksWater(balance, formula.Alkali.Mix))
        {
            found.Add(new(FormulaPath.Liquids, "The plan leaves no water to dissolve the alkali in; allow more water."));
        }
        return found.ToValueList();
    }

    private static bool IsTooLarge(in LyeBalance balance) => !(balance.BatchGrams <= Guard.LargestGrams);

    private static bool LacksFat(in LyeBalance balance) => !(balance.AllFatHydroxide >= LyeBalance.LeastDemand);

    private static bool AcidExceeds(in LyeBalance balance) => balance.AcidHydroxide > balance.Hydroxide * (1 + 1e-12);

    private static bool LacksWater(in LyeBalance balance, AlkaliMix mix) =>
        !mix.IsAllSolution && balance.Hydroxide > 0 && !(balance.LyeLiquidGrams > 0 && balance.DissolvingWaterGrams > 0);
}
