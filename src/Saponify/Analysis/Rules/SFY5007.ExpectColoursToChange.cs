namespace Saponify.Analysis.Rules;

internal sealed class ExpectColoursToChange() : FormulaRule(new("SFY5007", "ExpectColoursToChange", Severity.Info,
    "A colour that does not last in soap",
    "Some pigments and most plant colours change in alkali or fade in light: the cured bar is not the colour that was ordered.")
{
    Messages = [new("Changes", "{colour}: {change}")],
    Sources = ["common-practice", "memory"],
})
{
    private static bool Changes(Additive additive) => additive.Id is "manganese-violet" or "beetroot-powder" or "turmeric" or "spirulina" or "nettle-leaf" or "alkanet-root";

    public override void Analyze(in RuleContext context)
    {
        for (int i = 0; i < context.Formula.Additives.Count; i++)
        {
            Additive additive = context.Formula.Additives[i].Additive;
            if (Changes(additive))
                context.Report("Changes", Places.Additive(context.Formula, i), [Arg.Of("colour", additive.Name), Arg.Of("change", Places.Clause(additive.Caution))], evidence: additive.Id == "manganese-violet" ? Evidence.Memory : null);
        }
    }
}
