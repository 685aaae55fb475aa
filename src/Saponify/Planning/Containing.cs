namespace Saponify;

/// <summary>Something in the plan that is counted by its contents: lye liquid, held-back liquid, additive.</summary>
internal readonly record struct Containing(FormulaPath Path, string Name, Contents Contents, double Grams, bool IsWhileDissolving, bool IsUnknown)
{
    internal static IEnumerable<Containing> All(BatchPlan plan)
    {
        Formula formula = plan.Formula;
        LiquidPlan liquids = formula.Liquids;
        if (plan.Balance.LyeLiquidGrams > 0)
        {
            Liquid liquid = liquids.LyeLiquid.Liquid;
            yield return new(FormulaPath.LyeLiquid, liquid.Name, liquid.Contents, plan.Balance.LyeLiquidGrams, true, false);
        }
        for (int i = 0; i < liquids.HeldBack.Count; i++)
        {
            LiquidPortion portion = liquids.HeldBack[i];
            yield return new(FormulaPath.HeldBack.Item(i, portion.Line), portion.Liquid.Name, portion.Liquid.Contents, portion.Grams, false, false);
        }
        for (int i = 0; i < formula.Additives.Count; i++)
        {
            AdditivePortion portion = formula.Additives[i];
            yield return new(FormulaPath.Additives.Item(i, portion.Line), portion.Additive.Name, portion.Additive.Contents,
                portion.GramsFor(formula.ListedGrams), portion.Stage == Stage.LyeLiquid, portion.IsAmountUnknown);
        }
    }
}
