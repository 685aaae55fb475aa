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

    /// <summary>Place and reason; the reason alone when it is about the whole formula.</summary>
    public override string ToString() => Path.Parent is null ? Reason : $"{Path}: {Reason}";

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
        if (IsTooLarge(balance.BatchGrams))
            found.Add(new(FormulaPath.Root, "The batch comes to more than 1e9 g, a thousand tonnes; look for a wrong unit."));
        if (LacksFat(balance.AllFatHydroxide))
            found.Add(new(FormulaPath.Fats, "No fat takes up lye; add a fat with a mass above 0."));
        if (AcidExceeds(balance.AcidHydroxide, balance.Hydroxide))
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
        else if (LacksWater(formula.Alkali.Mix, balance.Hydroxide, balance.LyeLiquidGrams, balance.DissolvingWaterGrams))
        {
            found.Add(new(FormulaPath.Liquids, "The plan leaves no water to dissolve the alkali in; allow more water."));
        }
        return found.ToValueList();
    }

    internal static bool IsTooLarge(double batchGrams) => !(batchGrams <= Guard.LargestGrams);

    internal static bool LacksFat(double allFatHydroxide) => !(allFatHydroxide >= LyeBalance.LeastDemand);

    internal static bool AcidExceeds(double acidHydroxide, double hydroxide) => acidHydroxide > hydroxide * (1 + 1e-12);

    internal static bool LacksWater(AlkaliMix mix, double hydroxide, double lyeLiquidGrams, double dissolvingWaterGrams) =>
        !mix.IsAllSolution && hydroxide > 0 && !(lyeLiquidGrams > 0 && dissolvingWaterGrams > 0);
}
