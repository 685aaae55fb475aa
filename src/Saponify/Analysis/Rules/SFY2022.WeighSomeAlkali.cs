namespace Saponify.Analysis.Rules;

internal sealed class WeighSomeAlkali() : FormulaRule(new("SFY2022", "WeighSomeAlkali", Severity.Error,
    "No alkali",
    "Without alkali nothing saponifies.")
{
    Messages = [new("None", "no alkali is left for the fats: nothing saponifies")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.WhyNoSuperfat;

    public override void Analyze(in RuleContext context)
    {
        LyeBalance balance = context.Facts.Balance;
        if (balance.Hydroxide - balance.AcidHydroxide <= balance.AllFatHydroxide * 1e-9 && balance.AcidHydroxide <= balance.Hydroxide * (1 + 1e-12))
            context.Report("None", Places.Superfat(context.Formula), fixes: LyeFixes.Superfat(context.Formula, "WeighSomeAlkali.Usual", LyeFixes.UsualSuperfat));
    }
}
