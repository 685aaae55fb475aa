namespace Saponify.Analysis.Rules;

internal sealed class GiveEveryAdditiveAnAmount() : FormulaRule(new("SFY5014", "GiveEveryAdditiveAnAmount", Severity.Info,
    "An additive has no amount yet",
    "What has no amount is missing from the water, the sugar, the doses and the weighing list, and no rule can judge it.")
{
    Messages = [new("NoAmount", "{additive} has no amount: its {what} can't be judged")],
})
{
    private static string What(Additive additive) => additive.Contents switch
    {
        { SugarFraction: > 0, WaterFraction: > 0 } => "dose, sugar and water",
        { SugarFraction: > 0 } => "dose and sugar",
        { WaterFraction: > 0 } => "dose and water",
        _ => "dose",
    };

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            // what takes up lye is the business of the rule on lye
            if (portion.IsAmountUnknown && portion.Additive.FatHydroxidePerGram + portion.Additive.AcidHydroxidePerGram <= 0)
                context.Report("NoAmount", Places.Additive(context.Formula, i), [Arg.Of("additive", portion.Additive.Name), Arg.Of("what", What(portion.Additive))]);
        }
    }
}
