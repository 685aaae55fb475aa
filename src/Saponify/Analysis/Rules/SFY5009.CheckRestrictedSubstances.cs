namespace Saponify.Analysis.Rules;

internal sealed class CheckRestrictedSubstances() : FormulaRule(new("SFY5009", "CheckRestrictedSubstances", Severity.Warning,
    "A substance that cosmetics law restricts",
    "Boron compounds are toxic to reproduction, salicylic acid is limited and not for small children; local law decides.")
{
    Messages = [new("Restricted", "{substance}: {why}")],
    Sources = ["memory"],
})
{
    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            AdditivePortion portion = context.Formula.Additives[i];
            if (portion.Additive.Id is "borax" or "boric-acid" or "salicylic-acid")
                context.Report("Restricted", Places.Additive(context.Formula, i), [Arg.Of("substance", portion.Additive.Name), Arg.Of("why", Places.Clause(portion.Additive.Caution))],
                    [AdditiveFixes.Remove("CheckRestrictedSubstances", i, portion)], evidence: Evidence.Memory);
        }
    }
}
