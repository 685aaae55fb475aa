namespace Saponify.Analysis.Rules;

internal sealed class AskForTheFragranceLimit() : FormulaRule(new("SFY5105", "AskForTheFragranceLimit", Severity.Info,
    "A scent without a limit",
    "Where limits are kept for some scents, one without looks checked and is not.")
{
    Messages = [new("None", "{scent}: no limit of a certificate is given, while others have theirs")],
    Sources = ["ifra-guidance-2020"],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Setup.FragranceLimits.Count == 0 ? "no limit of a scent is given" : null;

    public override void Analyze(in RuleContext context)
    {
        foreach (int i in Scents.FirstLines(context.Formula))
        {
            if (Scents.Limit(context.Setup, context.Formula.Additives[i].Additive) is null)
                context.Report("None", Places.Additive(context.Formula, i), [Arg.Of("scent", context.Formula.Additives[i].Additive.Name)]);
        }
    }
}
