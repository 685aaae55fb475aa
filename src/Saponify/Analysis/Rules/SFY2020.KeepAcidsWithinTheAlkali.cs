namespace Saponify.Analysis.Rules;

internal sealed class KeepAcidsWithinTheAlkali() : FormulaRule(new("SFY2020", "KeepAcidsWithinTheAlkali", Severity.Error,
    "More acid than alkali",
    "The acids take up all alkali and nothing is left for the fats: no soap forms.")
{
    Messages = [new("Exceeds", "acids take up {acid} of alkali, more than the {alkali} there is")],
    Floor = Severity.Error,
})
{
    public override void Analyze(in RuleContext context)
    {
        LyeBalance balance = context.Facts.Balance;
        // no fix: more alkali for an amount of acid that may be a slip would be the dangerous way out
        if (balance.AcidHydroxide > balance.Hydroxide * (1 + 1e-12))
            context.Report("Exceeds", FormulaPath.Alkali, [Arg.Of("acid", context.Facts.Plan.GramsAsAlkali(balance.AcidHydroxide), "g"), Arg.Of("alkali", balance.AlkaliAsWeighed)]);
    }
}
