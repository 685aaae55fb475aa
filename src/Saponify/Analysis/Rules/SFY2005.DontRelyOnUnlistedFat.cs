using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class DontRelyOnUnlistedFat() : FormulaRule(new("SFY2005", "DontRelyOnUnlistedFat", Severity.Warning,
    "Only the fat of a liquid keeps the soap from being lye-heavy",
    "The fat of milk and cream varies from carton to carton, and nobody weighed it as fat: without it the alkali exceeds what the fats take up.")
{
    Messages = [new("Unlisted", "without the fat of liquids and additives the superfat is {listed}; with it {all}")],
    Floor = Severity.Warning,
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.WhyNoListedSuperfat;

    public override void Analyze(in RuleContext context)
    {
        if (!context.Facts.Plan.IsSafeOnlyByUnlistedFat)
            return;
        LyeBalance balance = context.Facts.Balance;
        FixOffer[] fixes = context.Formula.Alkali is SuperfatTarget { Basis: SuperfatBasis.AllFat, SuperfatFraction: >= 0 }
            ? [new("DontRelyOnUnlistedFat.CountListed", "Count the superfat against the listed fats", FixEffect.ChangesProduct, f => f with { Alkali = ((SuperfatTarget)f.Alkali).OfListedFats() })]
            : [];
        context.Report("Unlisted", Places.Superfat(context.Formula), [Arg.Of("listed", Stored.ToRatio(balance.OfListedFats!.Value)), Arg.Of("all", Stored.ToRatio(balance.OfAllFat!.Value))], fixes);
    }
}
