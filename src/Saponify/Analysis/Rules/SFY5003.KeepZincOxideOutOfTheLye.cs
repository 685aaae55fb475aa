namespace Saponify.Analysis.Rules;

internal sealed class KeepZincOxideOutOfTheLye() : FormulaRule(new("SFY5003", "KeepZincOxideOutOfTheLye", Severity.Warning,
    "Zinc oxide goes into the lye",
    "Zinc oxide dissolves in strong lye as zincate: it takes up alkali that the plan does not count and whitens nothing.")
{
    Messages = [new("Dissolves", "{additive} goes to the lye liquid, where strong lye dissolves it; at trace was expected")],
    Sources = ["memory"],
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion is { Stage: Stage.LyeLiquid, Additive.Id: "zinc-oxide" })
                context.Report("Dissolves", Places.Additive(context.Formula, i), [Arg.Of("additive", portion.Additive.Name)],
                    [AdditiveFixes.Move("KeepZincOxideOutOfTheLye", i, portion, Stage.Trace)], evidence: Evidence.Memory);
        }
    }
}
