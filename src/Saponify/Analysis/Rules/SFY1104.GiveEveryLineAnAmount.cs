namespace Saponify.Analysis.Rules;

internal sealed class GiveEveryLineAnAmount() : FormulaRule(new("SFY1104", "GiveEveryLineAnAmount", Severity.Warning,
    "A line has no amount",
    "A line of 0 g is forgotten or left over: what it should bring or take up is missing from the plan.")
{
    Messages = [new("Zero", "the line of {name} has an amount of 0")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.OfAllFat is null ? "no fat takes up lye" : null;

    private static SuperfatTarget Without(SuperfatTarget target, int index)
    {
        SuperfatTarget rest = AlkaliPlan.ForSuperfat(target.Superfat, [.. Places.Without(target.Alkalis, index)]);
        return target.Basis == SuperfatBasis.ListedFats ? rest.OfListedFats() : rest;
    }

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Fats.Count; i++)
        {
            int index = i;
            if (context.Formula.Fats[i].Grams <= 0)
                context.Report("Zero", FormulaPath.Fats.Item(i, context.Formula.Fats[i].Line).Member("mass"), [Arg.Of("name", context.Formula.Fats[i].Fat.Name)],
                    context.Formula.Fats.Count > 1 ? [new("GiveEveryLineAnAmount.RemoveFat", $"Remove the line of {context.Formula.Fats[i].Fat.Name}", FixEffect.KeepsProduct, f => f with { Fats = Places.Without(f.Fats, index) })] : []);
        }
        for (int i = 0; context.Formula.Alkali is WeighedAlkali { Hydroxide: > 0 } weighed && i < weighed.Alkalis.Count; i++)
        {
            int index = i;
            if (weighed.Alkalis[i].Grams <= 0)
                context.Report("Zero", Places.Alkali(i, weighed.Alkalis[i].Line).Member("mass"), [Arg.Of("name", Places.Name(weighed.Alkalis[i].Alkali.Kind))],
                    [new("GiveEveryLineAnAmount.RemoveAlkali", $"Remove the line of {Places.Name(weighed.Alkalis[i].Alkali.Kind)}", FixEffect.KeepsProduct, f => f with { Alkali = AlkaliPlan.Weighed([.. Places.Without(((WeighedAlkali)f.Alkali).Alkalis, index)]) })]);
        }
        for (int i = 0; context.Formula.Alkali is SuperfatTarget target && i < target.Alkalis.Count; i++)
        {
            int index = i;
            if (target.Alkalis[i].Fraction <= 0)
                context.Report("Zero", Places.Alkali(i, target.Alkalis[i].Line), [Arg.Of("name", Places.Name(target.Alkalis[i].Alkali.Kind))],
                    [new("GiveEveryLineAnAmount.RemoveAlkali", $"Remove the line of {Places.Name(target.Alkalis[i].Alkali.Kind)}", FixEffect.KeepsProduct, f => f with { Alkali = Without((SuperfatTarget)f.Alkali, index) })]);
        }
        for (int i = 0; i < context.Formula.Liquids.HeldBack.Count; i++)
        {
            int index = i;
            LiquidPortion portion = context.Formula.Liquids.HeldBack[i];
            if (portion.Grams <= 0)
                context.Report("Zero", FormulaPath.HeldBack.Item(i, portion.Line).Member("mass"), [Arg.Of("name", portion.Liquid.Name)],
                    [new("GiveEveryLineAnAmount.RemoveLiquid", $"Remove the line of {portion.Liquid.Name}", FixEffect.KeepsProduct, f => f with { Liquids = f.Liquids with { HeldBack = Places.Without(f.Liquids.HeldBack, index) } })]);
        }
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            int index = i;
            AdditivePortion portion = context.Formula.Additives[i];
            if (!portion.IsAmountUnknown && portion is { Mass.Value: 0 } or { OfFats.Value: 0 })
                context.Report("Zero", FormulaPath.Additives.Item(i, portion.Line), [Arg.Of("name", portion.Additive.Name)],
                    [new("GiveEveryLineAnAmount.RemoveAdditive", $"Remove the line of {portion.Additive.Name}", FixEffect.KeepsProduct, f => f with { Additives = Places.Without(f.Additives, index) })]);
        }
    }
}
