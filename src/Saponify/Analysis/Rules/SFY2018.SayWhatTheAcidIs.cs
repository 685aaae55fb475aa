namespace Saponify.Analysis.Rules;

internal sealed class SayWhatTheAcidIs() : FormulaRule(new("SFY2018", "SayWhatTheAcidIs", Severity.Info,
    "Acid of unknown kind is not counted",
    "Acid takes up lye before the fats do: the superfat may be higher than planned.")
{
    Messages = [new("Unknown", "{what}: {why}; it is not counted, and the superfat may be higher than planned")],
})
{
    public override void Analyze(in RuleContext context)
    {
        foreach (PossibleUptake possible in context.Facts.Plan.PossibleUptake)
        {
            if (possible.What.StartsWith("acid in ", StringComparison.Ordinal))
                context.Report("Unknown", possible.Path, [Arg.Of("what", possible.What), Arg.Of("why", possible.Why)]);
        }
    }
}
