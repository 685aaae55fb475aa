using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class KeepAlkaliWithinDemand() : FormulaRule(new("SFY2001", "KeepAlkaliWithinDemand", Severity.Error,
    "More alkali than fats and acids take up",
    "Alkali that nothing takes up stays in the soap and burns skin and eyes.")
{
    Messages = [new("Excess", "{alkali} of alkali against {demand} that acids and all fat can take up: a superfat of {superfat}")],
    Sources = ["icsc-0360", "icsc-0357"],
    Floor = Severity.Error,
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.WhyNoSuperfat;

    public override void Analyze(in RuleContext context)
    {
        LyeBalance balance = context.Facts.Balance;
        double superfat = balance.OfAllFat!.Value;
        if (superfat >= 0)
            return;
        double demand = context.Facts.Plan.GramsAsAlkali(balance.AllFatHydroxide + balance.AcidHydroxide);
        context.Report("Excess", Places.Superfat(context.Formula),
            [Arg.Of("alkali", balance.AlkaliAsWeighed), Arg.Of("demand", demand, "g"), Arg.Of("superfat", Stored.ToRatio(superfat))],
            LyeFixes.Superfat(context.Formula, "KeepAlkaliWithinDemand.Usual", LyeFixes.UsualSuperfat), evidence: context.Facts.Evidence);
    }
}
