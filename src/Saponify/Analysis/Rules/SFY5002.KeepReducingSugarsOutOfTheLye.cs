namespace Saponify.Analysis.Rules;

internal sealed class KeepReducingSugarsOutOfTheLye() : FormulaRule(new("SFY5002", "KeepReducingSugarsOutOfTheLye", Severity.Warning,
    "A reducing sugar goes into the lye",
    "Honey, glucose, fructose, lactose and milk powder scorch in hot strong lye, and in a closed vessel they can give off carbon monoxide.")
{
    Messages = [new("Scorches", "{additive} goes to the lye liquid; at trace was expected, thinned with a little water")],
    Sources = ["debruijn-1986", "dow-caustic"],
})
{
    private static bool Reduces(Additive additive) => additive.Kind == AdditiveKind.MilkSolids || additive.Id is "honey" or "glucose" or "fructose" or "lactose" or "molasses";

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion.Stage == Stage.LyeLiquid && Reduces(portion.Additive))
                context.Report("Scorches", Places.Additive(context.Formula, i), [Arg.Of("additive", portion.Additive.Name)], [AdditiveFixes.Move("KeepReducingSugarsOutOfTheLye", i, portion, Stage.Trace)]);
        }
    }
}
