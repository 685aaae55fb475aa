using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class AddLateFatsForSure() : FormulaRule(new("SFY2016", "AddLateFatsForSure", Severity.Info,
    "Before the late fats go in, the pot is lye-heavy",
    "If the late fats are forgotten or the batter sets too soon, the soap burns skin.")
{
    Messages =
    [
        new("Before", "until the late fats go in, the superfat of the pot is {before}"),
        new("Alone", "all fat goes in late: until then nothing in the pot takes up the lye"),
    ],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Balance.LateHydroxide > 0 ? facts.WhyNoSuperfat : "there is no late fat";

    public override void Analyze(in RuleContext context)
    {
        LyeBalance balance = context.Facts.Balance;
        if (balance is { BeforeLateFats: < 0, OfAllFat: >= 0 })
            context.Report("Before", FormulaPath.Fats, [Arg.Of("before", Stored.ToRatio(balance.BeforeLateFats.Value))], related: Late(context.Formula));
        else if (balance is { BeforeLateFats: null, OfAllFat: >= 0 and < 1 })
            context.Report("Alone", FormulaPath.Fats, [], related: Late(context.Formula));
    }

    private static FormulaPath[] Late(Formula formula) => [.. formula.Fats.Select((f, i) => (f, i)).Where(p => p.f.IsLate).Select(p => FormulaPath.Fats.Item(p.i, p.f.Line))];
}
