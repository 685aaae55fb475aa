namespace Saponify.Analysis.Rules;

internal sealed class SayHowMuchTakesUpLye() : FormulaRule(new("SFY2019", "SayHowMuchTakesUpLye", Severity.Warning,
    "Something that takes up lye has no amount",
    "What it takes up is missing from the plan: the superfat can't be told.")
{
    Messages = [new("NoAmount", "{additive} takes up lye, and its amount is not known: the superfat can't be told")],
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion.IsAmountUnknown && portion.Additive.FatHydroxidePerGram + portion.Additive.AcidHydroxidePerGram > 0)
                context.Report("NoAmount", FormulaPath.Additives.Item(i, portion.Line), [Arg.Of("additive", portion.Additive.Name)]);
        }
    }
}
