namespace Saponify.Analysis.Rules;

internal sealed class LeaveWaterForTheLye() : FormulaRule(new("SFY3001", "LeaveWaterForTheLye", Severity.Error,
    "No liquid is left to dissolve the alkali in",
    "Dry alkali in fat does not react evenly; it stays as grains that burn.")
{
    Messages =
    [
        new("Over", "held-back liquids, additives and the alkali bring {over} more water than the water rule asks for"),
        new("None", "the plan leaves no water to dissolve the alkali in"),
        new("Unsolvable", "{liquid} can't meet the water rule: its fat and acid ask for more alkali than its water can hold"),
    ],
    Floor = Severity.Error,
})
{
    public override void Analyze(in RuleContext context)
    {
        LyeBalance balance = context.Facts.Balance;
        if (!context.Facts.Plan.WaterRuleCanBeMet)
            context.Report("Unsolvable", FormulaPath.LyeLiquid, [Arg.Of("liquid", context.Formula.Liquids.LyeLiquid.Liquid.Name)]);
        else if (balance.WaterShortGrams > 0)
            context.Report("Over", FormulaPath.Liquids, [Arg.Of("over", balance.WaterShort)]);
        else if (!context.Formula.Alkali.Mix.IsAllSolution && balance.Hydroxide > 0 && !(balance.LyeLiquidGrams > 0 && balance.DissolvingWaterGrams > 0))
            context.Report("None", FormulaPath.Liquids);
    }
}
