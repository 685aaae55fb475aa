namespace Saponify.Analysis.Rules;

internal sealed class ListAFat() : FormulaRule(new("SFY2021", "ListAFat", Severity.Error,
    "No fat takes up lye",
    "Without fat the lye stays lye.")
{
    Messages = [new("None", "no fat takes up lye: list a fat with a mass above 0")],
    Floor = Severity.Error,
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.WhyNoDemand;

    public override void Analyze(in RuleContext context)
    {
        if (!(context.Facts.Balance.AllFatHydroxide >= LyeBalance.LeastDemand))
            context.Report("None", FormulaPath.Fats);
    }
}
