namespace Saponify.Analysis.Rules;

internal sealed class KeepScentOutOfTheLye() : FormulaRule(new("SFY5101", "KeepScentOutOfTheLye", Severity.Warning,
    "A scent goes into the lye",
    "Hot strong lye splits the esters of a scent and drives off its light parts: little of it is left, and what is left smells of something else.")
{
    Messages = [new("Lye", "{scent} goes to the lye liquid; at trace was expected")],
    Sources = ["schmaus-kubeczka-1985"],
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion.Stage == Stage.LyeLiquid && Scents.IsScent(portion))
                context.Report("Lye", Places.Additive(context.Formula, i), [Arg.Of("scent", portion.Additive.Name)], [AdditiveFixes.Move("KeepScentOutOfTheLye", i, portion, Stage.Trace)]);
        }
    }
}
