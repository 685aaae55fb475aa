using Saponify.Internals;

namespace Saponify.Analysis.Rules;

internal sealed class CountTheSuperfatOnce() : FormulaRule(new("SFY2011", "CountTheSuperfatOnce", Severity.Info,
    "The superfat may be counted twice",
    "A late fat that is meant as the superfat is counted in the lye demand already: with a superfat on top, twice as much fat stays free.")
{
    Messages = [new("Twice", "late fats are {late} of the fats and the superfat is {superfat} as well: if the late fats are meant as the superfat, plan for less")],
})
{
    public override string? WhyNotApplicable(FormulaFacts facts) => facts.Formula.Alkali is not SuperfatTarget ? "the alkali is weighed" : facts.HasFat ? null : "no listed fat takes up lye";

    public override void Analyze(in RuleContext context)
    {
        SuperfatTarget target = (SuperfatTarget)context.Formula.Alkali;
        double late = 0;
        foreach (FatPortion portion in context.Formula.Fats)
            late += portion.IsLate ? portion.Grams : 0;
        double share = late / context.Facts.ListedGrams;
        if (target.SuperfatFraction is >= 0.01 - 1e-9 and <= 0.2 + 1e-9 && Math.Abs(share - target.SuperfatFraction) <= (0.1 * target.SuperfatFraction) + 1e-9)
            context.Report("Twice", Places.Superfat(context.Formula), [Arg.Of("late", Stored.ToRatio(share)), Arg.Of("superfat", target.Superfat)]);
    }
}
