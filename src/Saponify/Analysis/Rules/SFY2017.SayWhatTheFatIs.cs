namespace Saponify.Analysis.Rules;

internal sealed class SayWhatTheFatIs() : FormulaRule(new("SFY2017", "SayWhatTheFatIs", Severity.Info,
    "Fat of unknown kind is not counted",
    "Fat that takes up lye unseen raises the superfat; the label of the carton says what it is.")
{
    Messages = [new("Unknown", "{what}: {why}; it is not counted, and the superfat may be higher than planned")],
})
{
    public override void Analyze(in RuleContext context)
    {
        foreach (PossibleUptake possible in context.Facts.Plan.PossibleUptake)
        {
            if (possible.What.StartsWith("fat in ", StringComparison.Ordinal))
                context.Report("Unknown", possible.Path, [Arg.Of("what", possible.What), Arg.Of("why", possible.Why)]);
        }
    }
}
