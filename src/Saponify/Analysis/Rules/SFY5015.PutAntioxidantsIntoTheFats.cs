namespace Saponify.Analysis.Rules;

internal sealed class PutAntioxidantsIntoTheFats() : FormulaRule(new("SFY5015", "PutAntioxidantsIntoTheFats", Severity.Info,
    "An antioxidant goes into the lye",
    "Antioxidants dissolve in fat and protect it there; strong lye spoils them. Common practice, no source.")
{
    Messages = [new("Lye", "{additive} goes to the lye liquid; the fat pot was expected")],
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion is { Stage: Stage.LyeLiquid, Additive.Kind: AdditiveKind.Antioxidant })
                context.Report("Lye", Places.Additive(context.Formula, i), [Arg.Of("additive", portion.Additive.Name)], [AdditiveFixes.Move("PutAntioxidantsIntoTheFats", i, portion, Stage.Fats)]);
        }
    }
}
