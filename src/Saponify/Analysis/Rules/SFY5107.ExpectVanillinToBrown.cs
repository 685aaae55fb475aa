namespace Saponify.Analysis.Rules;

internal sealed class ExpectVanillinToBrown() : FormulaRule(new("SFY5107", "ExpectVanillinToBrown", Severity.Info,
    "Vanillin browns soap",
    "A white or pastel bar with vanillin turns tan to dark brown within weeks. Common practice, no source.")
{
    Messages = [new("Browns", "{scent} turns the soap brown within weeks")],
})
{
    public override void Analyze(in RuleContext context)
    {
        foreach (int i in Scents.FirstLines(context.Formula))
        {
            if (context.Formula.Additives[i].Additive.Contents.AcidKind?.Id is "vanillin" or "ethyl-vanillin")
                context.Report("Browns", Places.Additive(context.Formula, i), [Arg.Of("scent", context.Formula.Additives[i].Additive.Name)]);
        }
    }
}
