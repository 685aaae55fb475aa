using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class UseFatsOfKnownAcids() : FormulaRule(new("SFY4104", "UseFatsOfKnownAcids", Severity.Info,
    "The bar can't be scored",
    "What is not known of the fatty acids can't be told of the bar: neither how hard it gets nor how it foams or keeps.")
{
    Messages = [new("NotScored", "there are no scores of this bar: {reason}; not counted: {parts}")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => Bars.WhyNoBar(facts);

    public override void Analyze(in RuleContext context)
    {
        // of many such fats another rule speaks
        if (context.Facts.Scores.WhyNotScored is not { } why || KnowTheFattyAcids.SharePoorlyKnown(context.Formula) * 100 > context.OptionOf("SFY8002", KnowTheFattyAcids.Highest))
            return;
        context.Report("NotScored", FormulaPath.Fats, [Arg.Of("reason", why), Arg.Of("parts", Blend.Names(context.Facts.Scores.Unscored.Where(p => p.Share.DecimalFractions >= 0.01).Select(p => $"{p.What} ({p.Why})")))],
            related: Blend.Lines(context.Formula, f => f.Class == FatClass.Wax || f.Profile is null or { IsPartial: true }));
    }
}
