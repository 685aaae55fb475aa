using UnitsNet;

namespace Saponify.Analysis.Rules;

internal sealed class UseAScaleFineEnough() : FormulaRule(new("SFY2013", "UseAScaleFineEnough", Severity.Warning,
    "The scale is too coarse for the alkali",
    "A step of the scale that is worth a point of superfat leaves to chance what the plan asks for.")
{
    Messages = [new("Coarse", "one step of {step} of the alkali's scale is worth {worth} of superfat; with {enough} of fats it would be worth {limit}")],
    Options = [Highest],
})
{
    internal static readonly RuleOption Highest = new("highest", "%", 1, 0.05, 10, "Superfat that one step of the alkali's scale may be worth.");

    public override string? WhyNotApplicable(FormulaFacts facts) => (facts.Setup.AlkaliScale ?? facts.Setup.Scale) is null ? "no scale is given" : facts.Balance.CanBeWeighed ? null : "the batch can't be weighed";

    public override void Analyze(in RuleContext context)
    {
        Scale scale = context.Setup.AlkaliScale ?? context.Setup.Scale!;
        ScalePlan plan = context.Facts.Plan.OnScale(context.Setup.Scale ?? scale, scale);
        double limit = context.Option(Highest);
        if (plan.SuperfatPerAlkaliStep is not { } worth || worth.Percent <= limit || plan.ListedFatsFor(Ratio.FromPercent(limit)) is not { } enough)
            return;
        double factor = Scaling.Up(enough.Grams * 1.005 / context.Facts.ListedGrams);
        FixOffer[] fixes = factor <= 20 ? [Scaling.By("UseAScaleFineEnough.Larger", context.Facts, factor)] : [];
        context.Report("Coarse", FormulaPath.Alkali, [Arg.Of("step", scale.Step), Arg.Of("worth", worth), Arg.Of("enough", enough), Arg.Of("limit", limit, "%")], fixes);
    }
}
